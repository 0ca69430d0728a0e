import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import style from './chart.module.css';
import { linear, roundTicks, type Scale } from './scale.js';

interface Props {
  readonly label: string;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly xTicks?: readonly number[];
  readonly yTicks?: readonly number[];
  readonly xText: (value: number) => string;
  readonly yText: (value: number) => string;
  readonly xTitle?: string;
  readonly yTitle: string;
  readonly height?: number;
  readonly children: (x: Scale, y: Scale) => ReactNode;
}

/** Drawn at the width it is shown in, so that its text keeps its size. */
const [NARROWEST, WIDEST] = [320, 1100] as const;
const PIXELS_PER_TICK = 110;
const PIXELS_PER_GIVEN_TICK = 80;
const [LEFT, RIGHT, TOP, BOTTOM] = [64, 14, 18, 34] as const;

/** Axes with round ticks and thin rules; what is drawn between them is the caller's. */
export function Chart({ label, x, y, xTicks, yTicks, xText, yText, xTitle, yTitle, height = 320, children }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const [width, setWidth] = useState<number>(WIDEST);
  useLayoutEffect(() => {
    const measure = () => {
      const shown = svg.current?.getBoundingClientRect().width ?? 0;
      if (shown > 0) setWidth(Math.round(Math.min(WIDEST, Math.max(NARROWEST, shown))));
    };
    measure();
    const watch = new ResizeObserver(measure);
    if (svg.current) watch.observe(svg.current);
    return () => watch.disconnect();
  }, []);
  const xScale = linear(x, [LEFT, width - RIGHT]);
  const yScale = linear(y, [height - BOTTOM, TOP]);
  return (
    <svg ref={svg} className={style.chart} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      {(yTicks ?? roundTicks(y[0], y[1], 5)).map((value) => (
        <g key={value}>
          <line className={style.rule} x1={LEFT} x2={width - RIGHT} y1={yScale(value)} y2={yScale(value)} />
          <text className={style.figure} x={LEFT - 8} y={yScale(value) + 4} textAnchor="end">
            {yText(value)}
          </text>
        </g>
      ))}
      {(xTicks
        ? thinned(xTicks, Math.floor(width / PIXELS_PER_GIVEN_TICK))
        : roundTicks(x[0], x[1], Math.max(2, Math.floor(width / PIXELS_PER_TICK)))
      ).map((value) => (
        <g key={value}>
          <line
            className={style.mark}
            x1={xScale(value)}
            x2={xScale(value)}
            y1={height - BOTTOM}
            y2={height - BOTTOM + 5}
          />
          <text className={style.figure} x={xScale(value)} y={height - BOTTOM + 18} textAnchor="middle">
            {xText(value)}
          </text>
        </g>
      ))}
      <line className={style.mark} x1={LEFT} x2={width - RIGHT} y1={height - BOTTOM} y2={height - BOTTOM} />
      <text className={style.title} x={LEFT} y={11}>
        {yTitle}
      </text>
      {xTitle === undefined ? null : (
        <text className={style.title} x={width - RIGHT} y={height - 2} textAnchor="end">
          {xTitle}
        </text>
      )}
      {children(xScale, yScale)}
    </svg>
  );
}

/** Every so-manieth of the ticks, so that no more than `most` are left. */
function thinned(ticks: readonly number[], most: number): readonly number[] {
  const every = Math.max(1, Math.ceil(ticks.length / most));
  return ticks.filter((_, index) => index % every === 0);
}

/** Points of a line as an SVG path; null breaks it. */
export function pathOf(points: readonly (readonly [number, number] | null)[]): string {
  let open = false;
  return points
    .map((point) => {
      if (point === null) {
        open = false;
        return '';
      }
      const step = `${open ? 'L' : 'M'}${point[0].toFixed(1)} ${point[1].toFixed(1)}`;
      open = true;
      return step;
    })
    .join('');
}

/** The area between two lines over the same places. */
export function bandOf(
  low: readonly (readonly [number, number])[],
  high: readonly (readonly [number, number])[],
): string {
  return `${pathOf(high)}${pathOf(low.toReversed()).replace('M', 'L')}Z`;
}
