package edgewright.desk.jobs;

import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.print.PrintService;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.DialogTypeSelection;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.MediaSizeName;

/** The printers of the machine, through the platform's own dialog. */
public final class Printers {
    /** Asks which printer, which pages and how many copies. */
    public interface Asking {
        /** @return whether to print; what was answered is in the job and in the choice then */
        boolean mayPrint(PrinterJob job, PrintRequestAttributeSet choice);
    }

    private Supplier<PrintService[]> found;
    private Asking asking;

    private Printers(Supplier<PrintService[]> found, Asking asking) {
        this.found = found;
        this.asking = asking;
    }

    /** Those of this machine. */
    public static Printers ofMachine() {
        return new Printers(PrinterJob::lookupPrintServices, Printers::askByPlatform);
    }

    private static boolean askByPlatform(PrinterJob job, PrintRequestAttributeSet choice) {
        if (!System.getProperty("os.name").startsWith("Linux")) {
            // There the system has a dialog of its own, which its users know.
            choice.add(DialogTypeSelection.NATIVE);
        }
        return job.printDialog(choice);
    }

    /** Has these printers be found from now on, and this ask. */
    public void printBy(Supplier<PrintService[]> otherPrinters, Asking otherAsking) {
        found = otherPrinters;
        asking = otherAsking;
    }

    /** Whether there is one. The machine may have to look for them in the network, so this is asked beside the event thread. */
    public boolean isAnyThere() {
        return found.get().length > 0;
    }

    /**
     * Asks by the dialog of the platform, on the event thread.
     *
     * @param title under which the pages stand in the queue of the printer
     * @param paper on which they are set, proposed first
     * @return what is to be printed, and how; empty if nothing is
     * @throws PrinterException if the printer has gone meanwhile
     */
    public Optional<Request> ask(String title, Pageable pages, MediaSizeName paper) throws PrinterException {
        PrintService[] services = found.get();
        if (services.length == 0) {
            throw new PrinterException("no printer");
        }
        PrinterJob job = PrinterJob.getPrinterJob();
        PrintService usual = job.getPrintService();
        boolean isFound = Stream.of(services).anyMatch(service -> service.equals(usual));
        job.setPrintService(isFound ? usual : services[0]);
        Request request = new Request(job, pages, new HashPrintRequestAttributeSet(new JobName(title, null)));
        request.choice.add(paper);
        job.setPageable(request);
        job.setJobName(title);
        return asking.mayPrint(job, request.choice) ? Optional.of(request) : Optional.empty();
    }

    /** Pages on their way to a printer that was chosen. */
    public static final class Request implements Pageable {
        private final PrinterJob job;
        private final Pageable pages;
        private final PrintRequestAttributeSet choice;
        private volatile Optional<Jobs.Worker> worker = Optional.empty();

        private Request(PrinterJob job, Pageable pages, PrintRequestAttributeSet choice) {
            this.job = job;
            this.pages = pages;
            this.choice = choice;
        }

        /**
         * Prints, beside the event thread. Where it is stopped, the printer is told to throw away what it was given.
         *
         * @param whoWorks is told how far it is, and asked before each page whether to go on
         * @return whether it came to the end; {@code false} if it was stopped
         * @throws PrinterException if the printer cannot
         */
        public boolean print(Jobs.Worker whoWorks) throws PrinterException {
            worker = Optional.of(whoWorks);
            try {
                job.print(choice);
                return true;
            } catch (PrinterAbortException e) {
                return false;
            }
        }

        @Override
        public int getNumberOfPages() {
            return pages.getNumberOfPages();
        }

        @Override
        public PageFormat getPageFormat(int index) {
            return pages.getPageFormat(index);
        }

        @Override
        public Printable getPrintable(int index) {
            Printable page = pages.getPrintable(index);
            return (graphics, format, at) -> isStopped(at) ? Printable.PAGE_EXISTS : page.print(graphics, format, at);
        }

        /** A page is asked for several times; where it is stopped, the job ends itself before the next one. */
        private boolean isStopped(int index) {
            boolean isStopped = worker.filter(each -> !each.goesOn(index, getNumberOfPages()))
                    .isPresent();
            if (isStopped) {
                job.cancel();
            }
            return isStopped;
        }
    }
}
