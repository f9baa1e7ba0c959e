package edgewright.desk.work;

import java.nio.file.Path;
import java.util.Optional;

/**
 * One chart in work with all that belongs to it: the workbench on which it lies, how it is looked at, and the file that it
 * comes from. A desk may have several; none of them knows of the others.
 *
 * @param bench the chart, its edits, its cursor
 * @param view how it is looked at
 */
public record Document(Workbench bench, ChartView view) {
    /** The file that the chart lies in; empty if it lies in none yet. */
    public Optional<Path> file() {
        return bench.file();
    }

    /** Whether this is the document of that file, however the file is named. */
    public boolean isOf(Path other) {
        return file().filter(own -> own.toAbsolutePath()
                        .normalize()
                        .equals(other.toAbsolutePath().normalize()))
                .isPresent();
    }

    /**
     * Whether nothing of anybody's would be missed if another chart took its place: it has no file, and nothing was ever done
     * to it.
     */
    public boolean isUntouched() {
        return file().isEmpty()
                && !bench.hasUnsavedWork()
                && bench.undoName().isEmpty()
                && bench.redoName().isEmpty();
    }

    /** Lets everybody go who listens to it: it is put away, and what showed it shows nothing any more. */
    public void close() {
        bench.endListening();
        view.endListening();
    }
}
