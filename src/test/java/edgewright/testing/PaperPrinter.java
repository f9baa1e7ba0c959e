package edgewright.testing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.StreamPrintServiceFactory;

/** A printer of the tests' own: the PostScript printer of the Java platform, which prints into memory. */
public final class PaperPrinter {
    private static final Pattern PAGE = Pattern.compile("(?m)^%%Page: ");

    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final PrintService service = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
            .getPrintService(printed);

    /** The one printer. */
    public PrintService[] services() {
        return new PrintService[] {service};
    }

    /** How many pages came out of it. */
    public int pages() {
        return (int) PAGE.matcher(printed.toString(StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }
}
