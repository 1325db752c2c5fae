/** How large the small picture of a photo is, in points of the picture. */

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** The frame of a list (92 by 69) on a screen with two points for one. */
const frame: PictureSize = { width: 184, height: 138 };

/** Fills the frame, which cuts off what stands over; its shape is that of the photo, and it is never larger than the photo. */
export function smallSize({ width, height }: PictureSize): PictureSize {
  const scale = Math.min(1, Math.max(frame.width / width, frame.height / height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
