/** RFC 5870: hands a place over to whatever finds the way on this device. */
export function geoAddress({ latitude, longitude }: { readonly latitude: number; readonly longitude: number }): string {
  return `geo:${latitude.toFixed(6)},${longitude.toFixed(6)}`;
}
