package edgewright.file.fault;

/** A fault of the file as a whole, or of the folder that it is to be written into. */
public sealed interface FileFault extends Fault {

    /** What there is to say of each; a new fault does not compile before it is answered here. */
    interface Cases<T> {
        /** One of which nothing more is known. */
        T of(Simple fault);

        /** The folder that the file is to be written into is not there. */
        T of(NoFolder fault);

        /** The system failed. */
        T of(OfTheSystem fault);

        /** More bytes than a chart file may have. */
        T of(TooLarge fault);
    }

    /** Faults of which nothing more is known. */
    enum Simple implements FileFault {
        /** There is no such file. */
        NOT_FOUND,
        /** A folder stands where a file was expected. */
        IS_A_FOLDER,
        /** The system does not allow to read it. */
        NOT_READABLE,
        /** The system does not allow to write it. */
        NOT_WRITABLE,
        /** The system makes no file of this name. */
        NOT_CREATED,
        /** The folder cannot put a file in the place of another in one step. */
        NOT_REPLACED_AT_ONCE,
        /** No journal of unsaved work. */
        NOT_A_JOURNAL,
        /** A journal that is torn, or was changed. */
        JOURNAL_NOT_WHOLE,
        /** Neither a file nor a folder, so it cannot be replaced. */
        NOT_A_FILE,
        /** Nothing in the file but blanks. */
        EMPTY,
        /** Bytes that are not UTF-8. */
        NOT_UTF8,
        /** Bytes that are not UTF-8, in a file that does not begin as a chart does. */
        NOT_TEXT;

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * The folder that the file is to be written into is not there.
     *
     * @param folder its path
     */
    record NoFolder(String folder) implements FileFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * The system failed.
     *
     * @param words the system's own
     */
    record OfTheSystem(String words) implements FileFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * More bytes than a chart file may have.
     *
     * @param most the bytes that it may have
     */
    record TooLarge(int most) implements FileFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }
}
