export { readFolder } from './read-folder.js';
