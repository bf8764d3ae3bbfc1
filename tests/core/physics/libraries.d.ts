declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetStandardAtmPressure(altitudeM: number): number;
    GetSatVapPres(tempC: number): number;
  };
  export default psychrolib;
}

declare module 'heat-index' {
  const library: {
    heatIndex(of: { readonly temperature: number; readonly humidity: number }): number;
  };
  export default library;
}
