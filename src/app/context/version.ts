/** Of the package this app was built from. Set by the build. */
declare const BUILT_VERSION: string;

/** Version of this app: "0.2.0". */
export const APP_VERSION: string = BUILT_VERSION;
