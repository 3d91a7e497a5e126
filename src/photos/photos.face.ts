/* What other features may use of photos. */
export { PictureFiles, type PictureOwner, type PictureSize } from './http/picture-files.js';
export { sendPicture } from './http/send-picture.js';
export { WITH_SIZE } from './photo-row.js';
