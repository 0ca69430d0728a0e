import { type ReactNode, useEffect, useRef, useState } from 'react';

/** What is far below the fold is drawn once it comes near, so that a slow phone shows first what is looked at first. */
export function WhenNear({
  className,
  children,
}: {
  readonly className?: string | undefined;
  readonly children: ReactNode;
}) {
  const place = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    if (place.current === null) return;
    const seen = new IntersectionObserver(([entry]) => entry?.isIntersecting && setNear(true), {
      rootMargin: '400px',
    });
    seen.observe(place.current);
    return () => seen.disconnect();
  }, []);
  return isNear ? children : <div ref={place} className={className} />;
}
