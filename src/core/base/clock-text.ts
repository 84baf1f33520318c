/** Seconds as a clock shows them: "0:07", "1:05:00". Takes 0 and more. */
export function clockText(seconds: number): string {
  const whole = Math.floor(seconds);
  const two = (value: number) => String(value).padStart(2, '0');
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}

/** Whether a clock helps where there are so many seconds: under 3 nobody presses a button twice, with half an hour nobody hurries. Our own lines. */
export const isWorthAClock = (seconds: number): boolean => seconds >= 3 && seconds <= 1800;
