package edgewright.fit;

/** What is answered about the base round of a bare piece. */
public sealed interface PickUpAnswer permits PickUpPlan, FitRefusal.TooSmall {}
