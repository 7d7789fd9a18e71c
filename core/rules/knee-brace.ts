/**
 * Push or pull in a knee brace at 45°, lb, by statics: P h √2 / a, the post pinned at its foot and pushed at the beam.
 * @param push P, sideways at the top of the post, lb
 * @param height h, from the foot of the post to the beam, in
 * @param leg a, from the beam down to the brace on the post, in
 */
export function kneeBraceForce(push: number, height: number, leg: number): number {
  return (push * height * Math.SQRT2) / leg
}
