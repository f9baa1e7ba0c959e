package edgewright.words.grammar;

/** Thrown where the reading of one piece of the text cannot go on; the remark says where and why. */
public final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Remark remark;

    public Stopped(Remark remark) {
        super(remark.what(), null, false, false);
        this.remark = remark;
    }

    public Remark remark() {
        return remark;
    }
}
