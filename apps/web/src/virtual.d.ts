declare module 'virtual:county-outlines' {
  /** Address of a GeoJSON file of lines with `kind` county or state. */
  const address: string;
  export default address;
}
declare module '*?worker&url' {
  const address: string;
  export default address;
}
