package secondbolt.notebook.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** What tells whether a file is still the one it was. */
public final class FileMark {
    /** No file that is made is nearly as large. */
    private static final long LARGEST_BYTES = 200_000_000;

    private FileMark() {}

    /** The SHA-256 of bytes, in hexadecimal figures. */
    static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * The hash of a file and, behind it, what its file system knows it by and when that changed it
     * last: a folder that was copied or unpacked from elsewhere has the same bytes, but not these.
     *
     * @return nothing if it is no file of its own or cannot be read
     */
    static Optional<String> ofMade(Path file) {
        try {
            BasicFileAttributes basic = attributes(file);
            return basic.isRegularFile() && basic.size() <= LARGEST_BYTES
                    ? Optional.of(hash(Files.readAllBytes(file)) + " " + identity(file, basic))
                    : Optional.empty();
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    /**
     * What a file's file system knows it by, and when that changed it last; no text, written to the
     * file or beside it by somebody else, can say it beforehand.
     *
     * <p>Where a file system tells neither a number nor when a file was changed, it is when the
     * file was made and written, which someone who unpacks it may set.
     *
     * @return nothing if it is no file of its own or cannot be read
     */
    public static Optional<String> identity(Path file) {
        try {
            BasicFileAttributes basic = attributes(file);
            return basic.isRegularFile() ? Optional.of(identity(file, basic)) : Optional.empty();
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    private static BasicFileAttributes attributes(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private static String identity(Path file, BasicFileAttributes basic) throws IOException {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return basic.creationTime() + " " + basic.lastModifiedTime();
        }
        return Files.getAttribute(file, "unix:ino", LinkOption.NOFOLLOW_LINKS)
                + " "
                + Files.getAttribute(file, "unix:ctime", LinkOption.NOFOLLOW_LINKS);
    }
}
