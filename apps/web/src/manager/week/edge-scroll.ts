const EDGE_PIXELS = 72;
const FASTEST_PIXELS = 14;

/** How far a page scrolls in one frame for a hand at this height of the window: the nearer to an edge, the faster. */
export function edgeSpeed(y: number, height: number): number {
  const into = y < EDGE_PIXELS ? y - EDGE_PIXELS : Math.max(0, y - (height - EDGE_PIXELS));
  return Math.round((FASTEST_PIXELS * Math.max(-EDGE_PIXELS, Math.min(EDGE_PIXELS, into))) / EDGE_PIXELS);
}

/** Scrolls the page while a hand that carries something is near its upper or lower edge. @returns how to end it */
export function scrollAtEdges(handAt: () => number, onScrolled: () => void): () => void {
  let frame = requestAnimationFrame(step);
  function step() {
    const before = scrollY;
    const speed = edgeSpeed(handAt(), innerHeight);
    if (speed !== 0) scrollBy(0, speed);
    if (scrollY !== before) onScrolled();
    frame = requestAnimationFrame(step);
  }
  return () => cancelAnimationFrame(frame);
}
