/**
 * The shelf of motifs, kept with the settings as files of their own.
 *
 * <p>Used by the desk alone. Begin at {@link edgewright.desk.shelf.MotifShelf}.
 */
package edgewright.desk.shelf;
