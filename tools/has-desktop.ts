/**
 * Is there a desktop on which a browser can be opened? On Linux only where a
 * display is told; elsewhere one is taken to be there.
 */
export function hasDesktop(
  platform: string,
  environment: Readonly<Record<string, string | undefined>>,
): boolean {
  const { DISPLAY, WAYLAND_DISPLAY, SSH_CONNECTION } = environment;
  if (SSH_CONNECTION !== undefined) return false;
  return platform !== 'linux' || Boolean(DISPLAY) || Boolean(WAYLAND_DISPLAY);
}
