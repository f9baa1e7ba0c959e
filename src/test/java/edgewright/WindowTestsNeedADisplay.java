package edgewright;

import java.awt.GraphicsEnvironment;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Skips the classes named {@code *WindowTest} where there is no display, and says so once, so that nobody takes a
 * green run without a display for a tested window.
 *
 * <p>JUnit finds it by itself, through {@code META-INF/services}.
 */
public final class WindowTestsNeedADisplay implements ExecutionCondition {

    private static final String NO_DISPLAY =
            "WINDOW TESTS SKIPPED: there is no display (DISPLAY is not set). `bash .ci/run` starts one.";

    private static final AtomicBoolean SAID = new AtomicBoolean();

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        boolean window = context.getTestClass()
                .filter(type -> outermost(type).getSimpleName().endsWith("WindowTest"))
                .isPresent();
        if (!window || !GraphicsEnvironment.isHeadless()) {
            return ConditionEvaluationResult.enabled("needs no display, or has one");
        }
        if (!SAID.getAndSet(true)) {
            System.out.println(NO_DISPLAY);
        }
        return ConditionEvaluationResult.disabled(NO_DISPLAY);
    }

    private static Class<?> outermost(Class<?> type) {
        return type.getEnclosingClass() == null ? type : outermost(type.getEnclosingClass());
    }
}
