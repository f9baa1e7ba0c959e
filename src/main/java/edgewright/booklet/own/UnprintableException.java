package edgewright.booklet.own;

/** Ends the reading of a picture. Never leaves this package. */
final class UnprintableException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient PhotoFault fault;

    UnprintableException(PhotoFault fault) {
        super(fault.reason().name(), null, false, false);
        this.fault = fault;
    }

    UnprintableException(PhotoFault.Reason reason) {
        this(PhotoFault.of(reason));
    }

    PhotoFault fault() {
        return fault;
    }
}
