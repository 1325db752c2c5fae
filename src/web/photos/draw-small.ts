/** A photo drawn small and upright. */

import { smallSize } from './small-size.ts';

/** Throws where the browser cannot open such a picture, or its bytes are damaged. */
export async function drawSmall(whole: Blob): Promise<Blob> {
  // Opened as it was held, and only then made smaller: browsers disagree about the order of the two.
  const opened = await createImageBitmap(whole, { imageOrientation: 'from-image' });
  try {
    const { width, height } = smallSize(opened);
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const drawing = canvas.getContext('2d')!;
    // JPEG has nothing to see through.
    drawing.fillStyle = 'white';
    drawing.fillRect(0, 0, width, height);
    drawing.imageSmoothingQuality = 'high';
    drawing.drawImage(opened, 0, 0, width, height);
    return await new Promise((made, failed) => {
      canvas.toBlob(
        (blob) => (blob === null ? failed(new Error('not drawn')) : made(blob)),
        'image/jpeg',
        0.8,
      );
    });
  } finally {
    opened.close();
  }
}
