/** Why a picture is not taken in, in words for the person who sent it, with the HTTP status that says the same. */
export class PictureFault extends Error {
  constructor(
    readonly status: 413 | 415 | 422,
    message: string,
  ) {
    super(message);
    this.name = 'PictureFault';
  }
}
