/** Hands a file to the share sheet where there is one for files, and to the downloads otherwise. */
export async function saveFile(name: string, type: string, text: string): Promise<'shared' | 'saved' | 'cancelled'> {
  const file = new File([text], name, { type });
  for (const shown of shareable(file)) {
    if (!navigator.canShare?.({ files: [shown] })) continue;
    try {
      await navigator.share({ files: [shown], title: name });
      return 'shared';
    } catch (error) {
      if ((error as Error).name === 'AbortError') return 'cancelled';
      // A share sheet that can't take this file: save it instead.
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return 'saved';
}

/** Some share sheets take JSON under the name of plain text alone; the app opens either. */
function shareable(file: File): File[] {
  if (file.type !== 'application/json') return [file];
  return [file, new File([file], `${file.name}.txt`, { type: 'text/plain' })];
}
