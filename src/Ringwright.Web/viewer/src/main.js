import { PieceView } from './view.js';

/**
 * Opens the picture in an element that has the component's parts.
 * @param {HTMLElement} root The component's element.
 * @param {{invokeMethodAsync: Function}} owner Told what is pointed at.
 */
export function open(root, owner) {
  return new PieceView(root, owner);
}
