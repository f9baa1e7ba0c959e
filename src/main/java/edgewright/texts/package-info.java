/**
 * A language as one value, {@link edgewright.texts.Language}: its messages with named values, its numbers, plurals and lists. It
 * is made in main and handed down. {@link edgewright.texts.Bundle} is what went before it, for the packages that are not
 * converted yet. This package knows nothing of borders.
 *
 * <p>May be used by every package.
 */
package edgewright.texts;
