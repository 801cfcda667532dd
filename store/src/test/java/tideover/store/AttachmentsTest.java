package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.rules.Digest;
import tideover.engine.rules.PhraseArg;
import tideover.store.attachment.Attachment;
import tideover.store.attachment.AttachmentResult;
import tideover.store.attachment.Attachments;
import tideover.store.attachment.MediaType;
import tideover.store.attachment.Photos;
import tideover.store.attachment.Privacy;
import tideover.store.customer.CustomerFacts;
import tideover.store.customer.CustomerId;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.site.SiteId;
import tideover.store.site.SiteSearch;

/** Photos and documents at a place of a site. */
class AttachmentsTest extends OnEveryMake {
    private static final byte[] PDF = "%PDF-1.7\n% invented\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);

    private Attachments attachments() {
        return store().attachments();
    }

    @Test
    void aPhotoIsKeptCleanedAtItsPlace() {
        SiteId site = site();
        Attachment kept = kept(add(site, "oven.cable.lengthM", "oven.JPG", Photos.jpeg(6)));
        byte[] content = attachments().content(kept.id());
        assertThat(new String(content, StandardCharsets.ISO_8859_1)).doesNotContain(Photos.SECRET);
        assertThat(kept.mediaType()).isEqualTo(MediaType.JPEG);
        assertThat(kept.fileName()).isEqualTo("oven.JPG");
        assertThat(kept.digest()).isEqualTo(Digest.of(content));
        assertThat(kept.sizeBytes()).isEqualTo(content.length);
        Store again = reopened();
        assertThat(again.attachments().of(site)).containsExactly(kept);
        assertThat(again.attachments().find(kept.id())).contains(kept);
        assertThat(again.attachments().content(kept.id())).isEqualTo(content);
    }

    @Test
    void aDocumentStaysAsItIs() {
        Attachment kept = kept(add(site(), "", "offer", PDF));
        assertThat(attachments().content(kept.id())).isEqualTo(PDF);
        assertThat(kept.fileName()).isEqualTo("offer.pdf");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drawing.svg | <svg xmlns=\"http://www.w3.org/2000/svg\"/> | attachment.typeUnknown",
                "page.jpg | <!DOCTYPE html><script>alert(1)</script> | attachment.typeUnknown",
                "table.csv | a;b | attachment.typeUnknown",
                "empty.pdf | '' | attachment.empty",
                "letter.png | %PDF-1.7 | attachment.endingOther",
                "phone.heic | '\0\0\0\u0018ftypheic' | attachment.typeHeic",
            })
    void whatIsNoPhotoAndNoDocumentIsRefused(String name, String content, String key) {
        SiteId site = site();
        AttachmentResult result = add(site, "oven", name, content.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(keys(result)).containsExactly(key);
        assertThat(attachments().of(site)).isEmpty();
    }

    @Test
    void aPhotoCutShortIsRefused() {
        byte[] photo = Photos.jpeg(1);
        assertThat(keys(add(site(), "oven", "oven.jpg", Arrays.copyOf(photo, 400))))
                .containsExactly("attachment.damaged");
    }

    @Test
    void aFileThatIsTooLargeIsRefusedWithTheLimit() {
        byte[] large = Arrays.copyOf(PDF, Attachments.LARGEST_BYTES + 1);
        AttachmentResult result = add(site(), "oven", "plan.pdf", large);
        assertThat(keys(result)).containsExactly("attachment.tooLarge");
        assertThat(((AttachmentResult.Refused) result)
                        .problems()
                        .get(0)
                        .phrase()
                        .arguments())
                .containsExactly(PhraseArg.verbatim("plan.pdf"), PhraseArg.verbatim("20"));
        kept(add(site(), "oven", "plan.pdf", Arrays.copyOf(PDF, Attachments.LARGEST_BYTES)));
    }

    @Test
    void theSamePhotoAtTwoPlacesGoesOnlyWithTheLast() {
        SiteId site = site();
        Attachment one = kept(add(site, "oven", "a.jpg", Photos.jpeg(1)));
        Attachment other = kept(add(site, "board", "b.jpg", Photos.jpeg(1)));
        assertThat(one.digest()).isEqualTo(other.digest());
        attachments().remove(one.id());
        assertThat(attachments().of(site)).containsExactly(other);
        assertThat(attachments().content(other.id())).hasSize((int) other.sizeBytes());
        attachments().remove(other.id());
        assertThatThrownBy(() -> attachments().content(other.id())).isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void personalPhotosGoWithTheCustomerWhenAskedFor() {
        SiteId site = site();
        CustomerId customer =
                store().customers().create(CustomerFacts.named("Marta")).id();
        store().customers().link(site, customer);
        Attachment board = kept(add(site, "board", "board.jpg", Photos.jpeg(1)));
        Attachment people =
                kept(attachments().add(site, "", "people.jpg", Photos.jpeg(6), Privacy.PERSONAL, TestSites.at(2)));
        store().customers().forget(customer, TestSites.at(3).when(), PersonalAttachments.KEEP);
        assertThat(attachments().of(site)).containsExactly(board, people);
        store().customers().forget(customer, TestSites.at(4).when(), PersonalAttachments.ERASE);
        assertThat(attachments().of(site)).containsExactly(board);
    }

    @Test
    void aPlaceIsAThingOrAFact() {
        SiteId site = site();
        assertThatThrownBy(() -> add(site, "../oven", "a.pdf", PDF)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> add(new SiteId("0123456789abcdef"), "oven", "a.pdf", PDF))
                .isInstanceOf(NoSuchElementException.class);
    }

    private AttachmentResult add(SiteId site, String place, String name, byte[] content) {
        return attachments().add(site, place, name, content, Privacy.ORDINARY, TestSites.at(1));
    }

    private static Attachment kept(AttachmentResult result) {
        assertThat(result).isInstanceOf(AttachmentResult.Kept.class);
        return ((AttachmentResult.Kept) result).attachment();
    }

    private static List<String> keys(AttachmentResult result) {
        assertThat(result).isInstanceOf(AttachmentResult.Refused.class);
        return ((AttachmentResult.Refused) result)
                .problems().stream().map(problem -> problem.phrase().key()).toList();
    }

    private SiteId site() {
        store().sites().create(TestSites.house(), "As planned", TestSites.at(0));
        return store().sites().list(SiteSearch.of("")).get(0).id();
    }
}
