/**
 * A language as one value, {@link edgewright.texts.Language}: its messages with named values, its numbers, plurals and lists. It
 * is made in main and handed down. This package knows nothing of borders.
 *
 * <p>May be used by every package.
 */
package edgewright.texts;
