/** The width that strips take side by side with a kerf between each two, mm. */
export const rippedWidth = (strips: readonly { readonly width: number }[], kerf: number): number =>
  strips.reduce((sum, { width }) => sum + width + kerf, -kerf);
