/** A pencil's check mark; words beside it say the same. */
export function CheckMark() {
  return (
    <svg className="check-mark" viewBox="0 0 24 24" aria-hidden="true">
      <path d="M3 13l6 7L21 4" />
    </svg>
  );
}
