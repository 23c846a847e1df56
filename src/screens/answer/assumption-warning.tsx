/** Said wherever an answer leans on the faces being parallel. */
export function AssumptionWarning() {
  return (
    <p class="note note-warning">
      This leans on your word that the faces are parallel. Were they not, part of the error would
      belong to the other face: a micrometer at two heights settles it.
    </p>
  );
}
