package edgewright.file.fault;

/**
 * What can be wrong with a file, each with what there is to say of it. Where it is stands in {@link Problem}; the sentence is
 * made by {@link ProblemSentences}.
 */
public sealed interface Fault permits FileFault, JsonFault, ChartFault {

    /** An answer to every fault there is: whoever matches faults forgets none. */
    interface Cases<T> extends FileFault.Cases<T>, JsonFault.Cases<T>, ChartFault.Cases<T> {}

    /** The answer to this fault among the cases. */
    <T> T among(Cases<T> cases);
}
