import type { ComponentType } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../ui/button.tsx';
import { Screen } from '../ui/screen.tsx';
import { useSignals } from '../ui/signal.ts';
import { CrashScreen } from './errors.tsx';
import { route } from './routes.ts';
import { whenQuiet } from './when-quiet.ts';

/** A screen gets the record that the address names, or an empty id. */
export type ScreenComponent = ComponentType<{ id: string }>;

/** The screen that the app opens with, and the others by name: what each asks, which answers the tap at once, and itself. */
export interface Screens {
  readonly home: ScreenComponent;
  readonly questions: Readonly<Record<string, string>>;
  /** Fetched (offline, from the cache) when the first of them is opened. */
  others(): Promise<Readonly<Record<string, ScreenComponent>>>;
}

let others: Readonly<Record<string, ScreenComponent>> | undefined;

export function Shell({ screens }: { screens: Screens }) {
  useSignals();
  const { screen, id } = route.value;
  // With the other screens: what they tell is kept until it can be shown.
  const [Banners, setBanners] = useState<ComponentType>();
  useEffect(
    () =>
      whenQuiet(
        () =>
          void import('./banners.tsx').then(
            (its) => setBanners(() => its.Banners),
            () => {},
          ),
      ),
    [],
  );
  return (
    <>
      <CrashScreen key={`${screen}/${id}`}>
        <Loaded name={screen in screens.questions ? screen : ''} id={id} screens={screens} />
      </CrashScreen>
      {Banners && <Banners />}
    </>
  );
}

function Loaded({ name, id, screens }: { name: string; id: string; screens: Screens }) {
  const [state, setState] = useState<'loading' | 'ready' | 'failed'>(name === '' || others ? 'ready' : 'loading');
  const place = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState(false);
  // Before the browser paints: nothing is waited for that could be on its way.
  useLayoutEffect(() => {
    scrollTo(0, 0);
    // A screen shows nothing until it has read its records: so long its question stands alone.
    const look = () => setShown(Boolean(place.current?.firstChild));
    const watch = new MutationObserver(look);
    if (place.current) watch.observe(place.current, { childList: true });
    look();
    if (state === 'loading')
      screens.others().then(
        (all) => {
          others = all;
          setState('ready');
        },
        () => setState('failed'),
      );
    return () => watch.disconnect();
  }, [name, screens]);
  useEffect(() => {
    // After a change of screen, a keyboard or a screen reader starts at the new screen's beginning; an entry that a thumb
    // was quicker to tap keeps the focus, or what is typed would go nowhere.
    if (!shown) return;
    const tapped = place.current?.contains(document.activeElement);
    if (arrivedBefore && !tapped) document.getElementById('main')?.focus({ preventScroll: true });
    arrivedBefore = true;
  }, [shown]);
  const Found = name === '' ? screens.home : others?.[name];
  if (state === 'failed') {
    return (
      <Screen question="This screen is not on the phone yet">
        <p>It could not be fetched. Once there is a signal, load the app again; then all of it works without one.</p>
        <Button look="big" onClick={() => location.reload()}>
          Load again
        </Button>
      </Screen>
    );
  }
  return (
    <>
      {!shown && name !== '' && <Screen question={screens.questions[name] ?? ''}>{null}</Screen>}
      <div ref={place}>{Found && <Found id={id} />}</div>
    </>
  );
}

let arrivedBefore = false;
