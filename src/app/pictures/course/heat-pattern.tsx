/** Heat is crossed lines, as on the picture of the kitchen. */
export function HeatPattern() {
  return (
    <pattern id="course-heat" width="8" height="8" patternUnits="userSpaceOnUse">
      <rect class="course-heat-ground" width="8" height="8" />
      <path class="course-heat-line" d="M0 0 8 8M8 0 0 8" />
    </pattern>
  );
}
