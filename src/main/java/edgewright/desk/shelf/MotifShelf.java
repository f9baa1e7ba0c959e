package edgewright.desk.shelf;

import edgewright.chart.NamedMotif;
import edgewright.file.FileNames;
import edgewright.file.FileProblemException;
import edgewright.file.MotifFiles;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Motifs in a folder, each a file of its own, so that they can be given away and got from others. The folder is looked at
 * afresh each time; it need not be there.
 */
public final class MotifShelf {
    /** So many are shown. */
    static final int MOST = 60;

    private static final String FOLDER = "motifs";

    private final Path folder;

    /** A motif file, and what came of reading it. */
    record Kept(Path file, MotifFiles.Result read) {}

    /**
     * The shelf of a user.
     *
     * @param settings the folder of the settings
     */
    public MotifShelf(Path settings) {
        folder = settings.resolve(FOLDER);
    }

    /** Where it lies. */
    Path folder() {
        return folder;
    }

    /** The first {@link #MOST} files on it in the order of their names, good or not. */
    List<Kept> all() {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + MotifFiles.ENDING)) {
            found.forEach(files::add);
        } catch (IOException e) {
            // No shelf yet, or none that can be looked at: it is empty.
            return List.of();
        }
        return files.stream()
                .sorted()
                .limit(MOST)
                .map(file -> new Kept(file, MotifFiles.read(file)))
                .toList();
    }

    /**
     * Puts a motif on it, in a file of its own beside all others.
     *
     * @return the file
     * @throws FileProblemException if it could not be written
     */
    Path keep(NamedMotif motif) throws FileProblemException {
        String name = FileNames.of(motif.name()).orElse("motif");
        Path file = folder.resolve(name + MotifFiles.ENDING);
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve(name + "-" + number + MotifFiles.ENDING);
        }
        MotifFiles.write(file, motif);
        return file;
    }
}
