/** Where photos are sent to. */
export const PHOTOS_PATH = '/files/photos';

/** Where the picture of a photo is to be had. */
export const photoPath = (id: string): string => `${PHOTOS_PATH}/${id}`;

/** Where the same picture is to be had small. */
export const smallPhotoPath = (id: string): string => `${photoPath(id)}/small`;
