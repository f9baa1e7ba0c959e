package edgewright.fit;

/** What is answered about a piece: a plan, or why there is none. */
public sealed interface FitAnswer permits FitPlan, FitRefusal {
    /** What was asked. */
    FitQuestion question();
}
