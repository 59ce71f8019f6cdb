/**
 * How a panel's strips group into sub-panels that still fit the planer, as few as possible, strips in their order.
 *
 * @param widths finished widths of the strips in order, mm
 * @param planerWidth mm, null without a planer
 * @returns for every sub-panel the indices of its strips. One group without a planer: nothing is gained by more
 * @valid strips narrower than the planer; a wider one stands alone
 * @example subPanels([100, 100, 100, 100, 100], 254) // => [[0, 1], [2, 3], [4]]
 * @source common practice; that filling each group in turn is fewest for a fixed order is arithmetic
 */
export function subPanels(widths: readonly number[], planerWidth: number | null): number[][] {
  const groups: number[][] = [];
  let width = Number.MAX_VALUE;
  widths.forEach((strip, index) => {
    if (groups.length === 0 || (planerWidth !== null && width + strip > planerWidth)) {
      groups.push([index]);
      width = strip;
    } else {
      groups[groups.length - 1]?.push(index);
      width += strip;
    }
  });
  return groups;
}
