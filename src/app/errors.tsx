import { Component, type ComponentChildren } from 'preact';
import { Button } from '../ui/button.tsx';
import { Screen } from '../ui/screen.tsx';

/** When a screen crashes, the maker can still take the data out and go on with the rest of the app. */
export class CrashScreen extends Component<{ children: ComponentChildren }, { error: Error | undefined }> {
  override state: { error: Error | undefined } = { error: undefined };

  static override getDerivedStateFromError(error: Error) {
    return { error };
  }

  override render() {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <Screen
        question="This screen broke down"
        action={
          <Button look="big now" onClick={takeDataOut}>
            Take the data out
          </Button>
        }
      >
        <div class="answer now">
          <p>Your records are still on this phone. Take them out now if you like, or go on with the rest.</p>
          <p class="small soft">{error.message}</p>
        </div>
      </Screen>
    );
  }
}

async function takeDataOut() {
  const { saveBackup } = await import('./save-backup.ts');
  await saveBackup();
}
