/**
 * What a text by somebody else says once for all its rounds: its own words, the base round, the multiple, corners, counts, loops,
 * yarns in turn.
 *
 * <p>A sentence that says something to hands and is none of these is refused; only one that says nothing to hands is prose. Begin
 * at {@link edgewright.words.setup.SetUpReader}.
 */
package edgewright.words.setup;
