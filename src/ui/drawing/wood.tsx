interface Box {
  x?: number;
  y?: number;
  width: number;
  height: number;
}

/** A rectangle of wood, hatched for what it is. */
export const Wood = ({ hatch, ...box }: Box & { hatch?: string | undefined }) => (
  <>
    <rect {...box} class="wood" />
    {hatch && <rect {...box} fill={hatch} />}
  </>
);

/** Words on wood, on a slip of paper as wide as they are, by their middle or their left end. */
export function Slip({
  x,
  y,
  text,
  from = 'middle',
}: {
  x: number;
  y: number;
  text: string;
  from?: 'middle' | 'start';
}) {
  const width = text.length * 7 + 8;
  return (
    <>
      <rect x={from === 'middle' ? x - width / 2 : x - 4} y={y - 9} width={width} height="18" class="paper" />
      <text x={x} y={y + 5} font-size="13" text-anchor={from}>
        {text}
      </text>
    </>
  );
}
