/** DejaVu Sans. A module of its own: the bundler copies the bytes of a file that is imported late one by one. */
export { default } from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf'
