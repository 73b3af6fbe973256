/** Photos: taking, looking, and how they stand. */
export const appPhotoWords = {
  'photo.take': 'Take a photo',
  'photo.choose': 'Choose a picture',
  'photo.how':
    'Damage, adjusters, the ring, what is left on it. Made smaller here; place and time of the camera are left out.',
  'photo.how.short': 'Made smaller here; place and time of the camera are left out.',
  'photo.already': 'That picture is in the book already.',
  'photo.look': 'Photo {n} of {all}, large',
  'photo.of': 'Photo {n} of {all}',
  'photo.alt': 'Photo {n} of {all}',
  'photo.drop': 'Leave photo {n} out',
  'photo.keep': 'Keep {n} {n?photo|photos}',
  'photo.none-yet': 'No photo yet. Take one, or say why there is none.',
  'photo.working': 'Making it smaller',
  'photo.unreadable':
    'This browser cannot read that picture. Take it with the camera here, or save it in another form first.',
  'photo.too-large': 'That picture cannot be made small enough. Take it again, further away.',
  'photo.kept': 'on this tablet',
  'photo.sent': 'in the shop’s book',
  'photo.refused': 'not taken: {why}',
  'photo.unsent': '{n} {n?photo|photos} kept here, not sent yet.',
  'photo.removed': 'removed on {day}',
  'photo.not-here': 'not here yet',
  'photo.not-here.note': 'It is still on the tablet it was taken with, or there is no network.',
} as const
