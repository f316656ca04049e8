package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.bay.BayJob;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.BayStep;
import org.loomproof.pages.bay.JointPictures;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.workshop.goods.joint.PlacedJoint;

/** Pictures of joints: taken at the step, kept small and bare, printed in the record, seen by nobody at the front desk. */
class JointsBrowserTest extends InBrowser {

    private static final String WHERE = "left kick panel, behind the fuse carrier";

    @TempDir
    private Path folder;

    /** A picture as a phone takes it, which says where it was taken. */
    private static byte[] picture(Color colour) {
        BufferedImage image = new BufferedImage(3000, 2000, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(colour);
        g.fillRect(0, 0, 3000, 2000);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpeg", out);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        byte[] plain = out.toByteArray();
        byte[] said = ("\u00FF\u00FE\0" + (char) (WHERE.length() + 2) + WHERE).getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, 2);
        file.writeBytes(said);
        file.write(plain, 2, plain.length - 2);
        return file.toByteArray();
    }

    private static FilePayload file(byte[] bytes) {
        return new FilePayload("IMG_0001.jpg", "image/jpeg", bytes);
    }

    @Test
    void aPictureTakenAtAStepIsPrintedInTheRecord() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            String at = shop.address() + "/jobs/" + job;
            BayJob bay = bay(book, job);
            BayStep step = bay.steps().stream()
                    .filter(one -> !bay.joints(one).isEmpty())
                    .findFirst()
                    .orElseThrow();
            PlacedJoint joint = bay.joints(step).getFirst();
            Page page = signedIn(somebody, shop);
            page.navigate(at + "/" + step.address());

            Locator camera = page.getByLabel("Picture of " + joint.name());
            camera.first().setInputFiles(file("no picture at all".getBytes(StandardCharsets.UTF_8)));
            assertThat(page.locator(".pictures-of .said").first()).containsText("no JPEG or PNG");
            assertThat(page.locator(".pictures-of img")).hasCount(0);
            somebody.setOffline(true);
            camera.first().setInputFiles(file(picture(Color.GREEN)));
            assertThat(page.locator(".pictures-of .said").first()).containsText("no network");
            somebody.setOffline(false);
            page.getByLabel("Picture of " + joint.name()).first().setInputFiles(file(picture(Color.GREEN)));
            assertThat(page.locator(".pictures-of img")).hasCount(1);
            Browsers.lookInBay(page, Screen.PHONE, "step-with-picture");

            JointPictures kept = new JointPictures(book, job);
            byte[] bytes = kept.open(kept.all().getFirst().id()).orElseThrow();
            BufferedImage small = ImageIO.read(new ByteArrayInputStream(bytes));
            assertThat(List.of(small.getWidth(), small.getHeight())).containsExactly(1000, 667);
            assertThat(new String(picture(Color.GREEN), StandardCharsets.ISO_8859_1))
                    .contains(WHERE);
            assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).doesNotContain(WHERE);

            page.navigate(at + "/papers/warranty-record.html");
            assertThat(page.locator(".photos img")).hasCount(1);
            assertThat(page.locator("tr.joint")
                            .filter(new Locator.FilterOptions()
                                    .setHas(page.locator("th")
                                            .getByText(joint.name(), new Locator.GetByTextOptions().setExact(true))))
                            .locator("td")
                            .last())
                    .hasText("1");
            Browsers.picture(page, Screen.PHONE, "warranty-record-with-picture");
            try (PDDocument pdf = Loader.loadPDF(
                    page.request().get(at + "/papers/warranty-record.pdf").body())) {
                assertThat(images(pdf)).containsExactly("1000 x 667");
            }
        }
    }

    private static List<String> images(PDDocument pdf) throws IOException {
        List<String> images = new ArrayList<>();
        for (PDPage page : pdf.getPages()) {
            for (var name : page.getResources().getXObjectNames()) {
                if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                    images.add(image.getWidth() + " x " + image.getHeight());
                }
            }
        }
        return images;
    }

    private static BayJob bay(OpenBook book, CardId job) {
        return new BayJobs().of(book.cards().find(job).orElseThrow(), book).orElseThrow();
    }

    @Test
    void allJointsStandOnOnePageAndAPictureCanBeTakenAway() {
        try (TestShop shop = TestShop.open(folder)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            String at = shop.address() + "/jobs/" + job;
            BayJob bay = bay(book, job);
            JointPictures pictures = new JointPictures(book, job);
            for (PlacedJoint joint : bay.joints().subList(0, 3)) {
                assertThat(pictures.add(Author.CONSOLE, bay, joint, picture(Color.BLUE)))
                        .isTrue();
            }
            for (Screen screen : Screen.of("joints")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = signedIn(somebody, shop);
                    page.navigate(at + "/joints");
                    assertThat(page.locator(".all-joints li"))
                            .hasCount(bay.joints().size());
                    Browsers.look(page, screen, "joints");
                }
            }
            try (BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
                Page page = signedIn(somebody, shop);
                page.navigate(at + "/joints");
                button(page, "Take away").first().click();
                assertThat(page.locator(".pictures li")).hasCount(2);
                page.navigate(at);
                assertThat(page.locator(".history")).containsText("took a picture of a joint away");
            }
        }
    }

    @Test
    void theFrontDeskSeesNoneAndAPictureOfAnotherPlanIsToldApart() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP);
                BrowserContext desk = browsers().somebody(Screen.LAPTOP)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            String at = shop.address() + "/jobs/" + job;
            book.attachments().add(job, Author.CONSOLE, "joint 0123456789 J1", picture(Color.RED));
            String id = new JointPictures(book, job).all().getFirst().id().value();
            Page page = signedIn(somebody, shop);
            page.navigate(at + "/joints");
            assertThat(page.locator(".pictures li")).containsText("J1 of an earlier plan");
            assertThat(page.locator(".all-joints img")).hasCount(0);
            assertThat(page.request().get(at + "/joints/" + id).headers()).containsEntry("content-type", "image/jpeg");
            assertThat(page.request().get(at + "/pictures/" + id).status()).isEqualTo(404);

            Page front = desk.newPage();
            front.navigate(shop.address() + "/");
            signIn(front, "cy", "a kettle for Cy!");
            for (String path : List.of("/joints", "/joints/" + id, "/papers/warranty-record.html")) {
                assertThat(front.request().get(at + path).status()).as(path).isEqualTo(403);
            }
            assertThat(front.request().get(at + "/pictures/" + id).status()).isEqualTo(404);
        }
    }
}
