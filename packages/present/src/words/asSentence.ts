/** Words of the plan as a sentence: a capital at the front, a stop at the end, nothing else changed. */
export function asSentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === "") return "";
  const sentence = trimmed.charAt(0).toUpperCase() + trimmed.slice(1);
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
