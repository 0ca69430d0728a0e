const LONGEST_PIXELS = 1600;
const QUALITY = 0.82;

/** A camera's picture small enough to keep many and to send over a thin line; as it is where it cannot be drawn. */
export async function shrinkPhoto(file: Blob): Promise<Blob> {
  try {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST_PIXELS / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    return await new Promise((done) => canvas.toBlob((blob) => done(blob ?? file), 'image/jpeg', QUALITY));
  } catch {
    return file;
  }
}
