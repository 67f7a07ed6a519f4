/** Three rising tones: told apart from a telephone's, and from a smoke alarm's one high tone. */
const TONES_HZ = [660, 880, 1320] as const;
const TONE_S = 0.22;
const ROUNDS = 3;
const LOUD = 0.5;
const SHAKE_MS = [400, 150, 400, 150, 700];

let context: AudioContext | null = null;

/** A browser makes sound only after a touch: to be called from one. Gives whether sound is there. */
export function armAlarm(): boolean {
  try {
    context ??= new AudioContext();
    void context.resume();
    return true;
  } catch {
    return false;
  }
}

/** Sounds where it was armed, and shakes the device where that can be done; words stand on the screen in any case. */
export function soundAlarm(rounds: number = ROUNDS): void {
  if (typeof navigator.vibrate === "function") navigator.vibrate(SHAKE_MS);
  if (context === null) return;
  for (let round = 0; round < rounds; round += 1) {
    for (const [i, toneHz] of TONES_HZ.entries()) {
      playTone(context, toneHz, context.currentTime + (round * (TONES_HZ.length + 1) + i) * TONE_S);
    }
  }
}

function playTone(audio: AudioContext, toneHz: number, atS: number): void {
  const tone = audio.createOscillator();
  const loudness = audio.createGain();
  tone.type = "triangle";
  tone.frequency.value = toneHz;
  loudness.gain.setValueAtTime(0, atS);
  loudness.gain.linearRampToValueAtTime(LOUD, atS + 0.02);
  loudness.gain.linearRampToValueAtTime(0, atS + TONE_S);
  tone.connect(loudness).connect(audio.destination);
  tone.start(atS);
  tone.stop(atS + TONE_S);
}
