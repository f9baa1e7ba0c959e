/**
 * Unsaved work kept against a crash and offered again; files that others change or have open; charts dropped on the window.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.journal.DeskJournal}. What is written to the disk is
 * written by {@link edgewright.file.Journal}.
 */
package edgewright.desk.journal;
