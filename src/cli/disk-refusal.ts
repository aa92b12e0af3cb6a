/* Why the disk refused, in words; anything that is not the person's to mend is thrown again. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file or folder.',
  EISDIR: 'That is a folder.',
  ENOTDIR: 'Part of that path is a file, not a folder.',
  EACCES: 'It may not be read or written.',
  EPERM: 'It may not be read or written.',
  EROFS: 'That place can only be read.',
  ENOSPC: 'The disk is full.',
  ENAMETOOLONG: 'The name is too long.',
  EXDEV: 'Part of that path leads to another disk.',
  ELOOP: 'Part of that path leads in a circle.',
  EBUSY: 'A program keeps one of the files open.',
  ENOTEMPTY: 'A folder is in the way.',
  EEXIST: 'A file of that name is in the way.',
}

export const reasonOf = (error: unknown): string => {
  const code = (error as NodeJS.ErrnoException).code
  const reason = code === undefined ? undefined : REASONS[code]
  if (reason === undefined) throw error
  return reason
}
