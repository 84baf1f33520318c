/** What calls a person back to the bench: a sound, a shake, and a screen that does not go dark. */

export interface Signal {
  /** sets the sound up for `seconds` from now, so that it comes on time even if the page is slow */
  readonly startIn: (seconds: number) => void;
  readonly ring: () => void;
  readonly stop: () => void;
}

/** Two short notes, twice. */
const NOTES = [
  [880, 0],
  [1175, 0.18],
  [880, 0.6],
  [1175, 0.78],
] as const;

interface Lock {
  release: () => Promise<void>;
}

export function createSignal(): Signal {
  let context: AudioContext | undefined;
  let lock: Lock | undefined;
  let stopped = false;

  const stayAwake = async () => {
    try {
      const held = await (navigator as { wakeLock?: { request: (type: 'screen') => Promise<Lock> } }).wakeLock?.request(
        'screen',
      );
      if (stopped) void held?.release().catch(() => undefined);
      else lock = held;
    } catch {
      // Low battery or an old browser: the clock is right all the same.
    }
  };
  // The lock is dropped whenever the page is left; it is asked for again on the way back.
  const onVisible = () => {
    if (document.visibilityState === 'visible' && !stopped) void stayAwake();
  };

  return {
    startIn: (seconds) => {
      void stayAwake();
      document.addEventListener('visibilitychange', onVisible);
      try {
        context = new AudioContext();
        const start = context.currentTime + seconds;
        for (const [pitch, after] of NOTES) {
          const tone = context.createOscillator();
          const volume = context.createGain();
          tone.frequency.value = pitch;
          volume.gain.setValueAtTime(0, start + after);
          volume.gain.linearRampToValueAtTime(0.3, start + after + 0.02);
          volume.gain.linearRampToValueAtTime(0, start + after + 0.16);
          tone.connect(volume).connect(context.destination);
          tone.start(start + after);
          tone.stop(start + after + 0.17);
        }
      } catch {
        // No sound on this device: screen and shake remain.
      }
    },
    ring: () => {
      try {
        navigator.vibrate?.([200, 100, 200, 100, 400]);
      } catch {
        // No shake either.
      }
    },
    stop: () => {
      stopped = true;
      document.removeEventListener('visibilitychange', onVisible);
      void context?.close().catch(() => undefined);
      void lock?.release().catch(() => undefined);
    },
  };
}
