/** One swatch with its sizes and its grain arrow, drawn in proportion. */

export function CutPlate({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }) {
  const scale = 110 / Math.max(widthMm, heightMm);
  const [w, h] = [widthMm * scale, heightMm * scale];
  const [x, y] = [40, 8];
  const middle = x + w / 2;
  return (
    <svg
      viewBox={`0 0 ${w + 130} ${h + 34}`}
      class="cut-plate"
      role="img"
      aria-label={`A swatch ${widthMm} mm wide and ${heightMm} mm high; the grain runs along its height.`}
    >
      <rect class="ink fill-paper" x={x} y={y} width={w} height={h} />
      <path
        class="ink"
        d={`M${middle} ${y + h * 0.18}V${y + h * 0.82}M${middle - 5} ${y + h * 0.18 + 8}L${middle} ${y + h * 0.18}l5 8M${middle - 5} ${y + h * 0.82 - 8}L${middle} ${y + h * 0.82}l5 -8`}
      />
      <text class="plate-text" x={x + w + 8} y={y + h / 2}>
        {heightMm} mm,
      </text>
      <text class="plate-text" x={x + w + 8} y={y + h / 2 + 16}>
        grain
      </text>
      <text class="plate-text" x={middle} y={y + h + 20} text-anchor="middle">
        {widthMm} mm
      </text>
    </svg>
  );
}
