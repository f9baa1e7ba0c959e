/**
 * Which techniques a pattern uses, and how each is worked, step by step: for those who print them and those who draw them.
 *
 * <p>May be used by words, draw and booklet. Begin at {@link edgewright.words.technique.ToldTechnique}.
 */
package edgewright.words.technique;
