package edgewright.desk.work;

/** What was asked to be told of, so that it can be asked no more. */
@FunctionalInterface
public interface Listening {
    /** Tells the listener of nothing from now on, not even of what waits to be told. A second call does nothing. */
    void end();
}
