import type { Mark } from './figure.ts';

/** A measured point's mark, centred on (0, 0); shapes differ so that lines are told apart without colour. */
export function MarkShape({ mark, size }: { mark: Mark; size: number }) {
  const r = size;
  switch (mark) {
    case 'ring':
      return <circle r={r} fill="var(--page)" stroke="currentColor" strokeWidth={1.6} />;
    case 'square':
      return <rect x={-r * 0.9} y={-r * 0.9} width={r * 1.8} height={r * 1.8} fill="currentColor" />;
    case 'diamond':
      return <path d={`M0 ${-r * 1.25}L${r * 1.25} 0 0 ${r * 1.25} ${-r * 1.25} 0Z`} fill="currentColor" />;
    case 'triangle':
      return <path d={`M0 ${-r * 1.2}L${r * 1.15} ${r * 0.9}H${-r * 1.15}Z`} fill="currentColor" />;
    case 'cross':
      return (
        <path d={`M${-r} ${-r}L${r} ${r}M${r} ${-r}L${-r} ${r}`} stroke="currentColor" strokeWidth={1.8} />
      );
    default:
      return <circle r={r} fill="currentColor" />;
  }
}
