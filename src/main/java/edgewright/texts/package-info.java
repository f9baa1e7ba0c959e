/**
 * Texts for people, taken from resource bundles and put together. It knows nothing of borders.
 *
 * <p>May be used by every package.
 */
package edgewright.texts;
