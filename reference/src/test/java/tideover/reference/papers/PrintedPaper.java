package tideover.reference.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A paper as a reader sees it: pages with their size and words, bookmarks, typefaces. */
final class PrintedPaper {

    private static final double MM_PER_POINT = 25.4 / 72;

    /**
     * One page.
     *
     * @param text   its words, each run of white space one blank
     * @param beyond what stands outside of the page or within 4 mm of its edge
     */
    record Page(long widthMm, long heightMm, String text, List<String> beyond) {
        boolean isSheet() {
            return widthMm >= 420;
        }

        boolean isWide() {
            return widthMm == 297;
        }
    }

    /** A bookmark and the page it leads to, from 1. */
    record Bookmark(String name, int page) {}

    private final List<Page> pages = new ArrayList<>();
    private final List<Bookmark> bookmarks = new ArrayList<>();
    private final Set<String> looseFonts = new TreeSet<>();

    PrintedPaper(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDPage page = document.getPage(i);
                pages.add(page(document, i, page));
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    if (!font.isEmbedded()) looseFonts.add(font.getName());
                }
            }
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children())
                bookmarks.add(new Bookmark(
                        item.getTitle(), document.getPages().indexOf(item.findDestinationPage(document)) + 1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Page page(PDDocument document, int index, PDPage page) throws IOException {
        double widthPt = page.getMediaBox().getWidth();
        double heightPt = page.getMediaBox().getHeight();
        double edgePt = 4 / MM_PER_POINT;
        List<String> beyond = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) throws IOException {
                for (TextPosition at : positions)
                    if (at.getX() < edgePt
                            || at.getX() + at.getWidth() > widthPt - edgePt
                            || at.getY() < edgePt
                            || at.getY() > heightPt - 1) {
                        beyond.add(text);
                        break;
                    }
                super.writeString(text, positions);
            }
        };
        stripper.setStartPage(index + 1);
        stripper.setEndPage(index + 1);
        String text = stripper.getText(document).replaceAll("\\s+", " ");
        return new Page(Math.round(widthPt * MM_PER_POINT), Math.round(heightPt * MM_PER_POINT), text, beyond);
    }

    List<Page> pages() {
        return pages;
    }

    List<Bookmark> bookmarks() {
        return bookmarks;
    }

    /** Typefaces that are not in the file itself. */
    Set<String> looseFonts() {
        return looseFonts;
    }

    /** The words of all pages. */
    String text() {
        return String.join(" ", pages.stream().map(Page::text).toList());
    }

    /** The words of the circuit list. */
    String circuits() {
        return String.join(
                " ", pages.stream().filter(Page::isWide).map(Page::text).toList());
    }
}
