package edgewright.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** That a chart file is open here, as other windows and processes see it. */
public final class ChartPresence {
    /** Where nobody can say who has which chart open. */
    static final ChartPresence UNKNOWN = new ChartPresence(false, Optional.empty());

    private final boolean isElsewhere;
    private final Optional<HeldFile> sign;

    private ChartPresence(boolean isElsewhere, Optional<HeldFile> sign) {
        this.isElsewhere = isElsewhere;
        this.sign = sign;
    }

    static ChartPresence in(Path sign) throws IOException {
        boolean isElsewhere = ProcessLock.writerOf(sign) == ProcessLock.Writer.ALIVE;
        return new ChartPresence(isElsewhere, HeldFile.hold(sign));
    }

    /** Whether another had it open when it was opened here. */
    public boolean isElsewhere() {
        return isElsewhere;
    }

    /** The chart is not open here any more. */
    public void leave() {
        sign.ifPresent(HeldFile::release);
    }
}
