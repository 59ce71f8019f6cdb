/** Hands a file to the share sheet where there is one for files, and to the downloads otherwise. */
export async function saveFile(name: string, type: string, text: string): Promise<'shared' | 'saved' | 'cancelled'> {
  const file = new File([text], name, { type });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
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
