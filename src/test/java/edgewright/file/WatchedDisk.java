package edgewright.file;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * A disk in memory that writes down, in their order, the deeds by which a file is made: open, write, force, move, delete. A deed
 * can be let fail, or be the last before a kill or a power cut. A name of ours for a part is written down as {@code part}.
 */
final class WatchedDisk extends FileSystem {
    /** Is asked before each deed; what it throws comes of the deed. */
    interface Guard {
        void before(String deed) throws IOException;
    }

    private final FileSystem memory = Jimfs.newFileSystem(
            Configuration.unix().toBuilder().setAttributeViews("basic", "posix").build());
    private final Provider provider = new Provider();
    private final List<String> deeds = new ArrayList<>();
    private Guard guard = deed -> {};

    /** What was done since the last {@link #forget}. */
    List<String> deeds() {
        return List.copyOf(deeds);
    }

    void forget() {
        deeds.clear();
    }

    /** Has this guard asked from now on. */
    void guard(Guard other) {
        guard = other;
    }

    private void done(String deed) throws IOException {
        guard.before(deed);
        deeds.add(deed);
    }

    private static String name(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.startsWith(".edgewright-") ? "part" : name;
    }

    private Path wrapped(Path path) {
        return path == null ? null : new WatchedPath(this, path);
    }

    private static Path inner(Path path) {
        return ((WatchedPath) path).inner();
    }

    @Override
    public FileSystemProvider provider() {
        return provider;
    }

    @Override
    public void close() throws IOException {
        memory.close();
    }

    @Override
    public boolean isOpen() {
        return memory.isOpen();
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return memory.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        return StreamSupport.stream(memory.getRootDirectories().spliterator(), false)
                .map(this::wrapped)
                .toList();
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        return memory.getFileStores();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return memory.supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
        return wrapped(memory.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
        PathMatcher matcher = memory.getPathMatcher(pattern);
        return path -> matcher.matches(inner(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        return memory.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() {
        throw new UnsupportedOperationException();
    }

    /** A path of this disk. */
    private record WatchedPath(WatchedDisk disk, Path inner) implements Path {
        private Path other(Path path) {
            return disk.wrapped(path);
        }

        @Override
        public FileSystem getFileSystem() {
            return disk;
        }

        @Override
        public boolean isAbsolute() {
            return inner.isAbsolute();
        }

        @Override
        public Path getRoot() {
            return other(inner.getRoot());
        }

        @Override
        public Path getFileName() {
            return other(inner.getFileName());
        }

        @Override
        public Path getParent() {
            return other(inner.getParent());
        }

        @Override
        public int getNameCount() {
            return inner.getNameCount();
        }

        @Override
        public Path getName(int index) {
            return other(inner.getName(index));
        }

        @Override
        public Path subpath(int begin, int end) {
            return other(inner.subpath(begin, end));
        }

        @Override
        public boolean startsWith(Path path) {
            return inner.startsWith(WatchedDisk.inner(path));
        }

        @Override
        public boolean endsWith(Path path) {
            return inner.endsWith(WatchedDisk.inner(path));
        }

        @Override
        public Path normalize() {
            return other(inner.normalize());
        }

        @Override
        public Path resolve(Path path) {
            return other(inner.resolve(WatchedDisk.inner(path)));
        }

        @Override
        public Path relativize(Path path) {
            return other(inner.relativize(WatchedDisk.inner(path)));
        }

        @Override
        public URI toUri() {
            return inner.toUri();
        }

        @Override
        public Path toAbsolutePath() {
            return other(inner.toAbsolutePath());
        }

        @Override
        public Path toRealPath(LinkOption... options) throws IOException {
            return other(inner.toRealPath(options));
        }

        @Override
        public WatchKey register(WatchService watcher, WatchEvent.Kind<?>[] kinds, WatchEvent.Modifier... modifiers) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int compareTo(Path path) {
            return inner.compareTo(WatchedDisk.inner(path));
        }

        @Override
        public String toString() {
            return inner.toString();
        }
    }

    private final class Provider extends FileSystemProvider {
        private FileSystemProvider memory() {
            return memory.provider();
        }

        @Override
        public String getScheme() {
            return "watched";
        }

        @Override
        public FileSystem newFileSystem(URI uri, Map<String, ?> env) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileSystem getFileSystem(URI uri) {
            return WatchedDisk.this;
        }

        @Override
        public Path getPath(URI uri) {
            throw new UnsupportedOperationException();
        }

        @Override
        public SeekableByteChannel newByteChannel(
                Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
            return memory().newByteChannel(inner(path), options, attributes);
        }

        @Override
        public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
                throws IOException {
            if (java.nio.file.Files.isDirectory(inner(path))) {
                // As Linux opens a folder; the one in memory does not.
                return new WatchedChannel(WatchedDisk.this, name(path), null);
            }
            if (options.contains(StandardOpenOption.CREATE_NEW)) {
                done("create " + name(path));
            }
            return new WatchedChannel(
                    WatchedDisk.this, name(path), memory().newFileChannel(inner(path), options, attributes));
        }

        @Override
        public DirectoryStream<Path> newDirectoryStream(Path path, DirectoryStream.Filter<? super Path> filter)
                throws IOException {
            DirectoryStream<Path> stream =
                    memory().newDirectoryStream(inner(path), entry -> filter.accept(wrapped(entry)));
            List<Path> entries = StreamSupport.stream(stream.spliterator(), false)
                    .map(WatchedDisk.this::wrapped)
                    .toList();
            return new DirectoryStream<>() {
                @Override
                public Iterator<Path> iterator() {
                    return entries.iterator();
                }

                @Override
                public void close() throws IOException {
                    stream.close();
                }
            };
        }

        @Override
        public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
            memory().createDirectory(inner(path), attributes);
        }

        @Override
        public void createSymbolicLink(Path link, Path target, FileAttribute<?>... attributes) throws IOException {
            memory().createSymbolicLink(inner(link), inner(target), attributes);
        }

        @Override
        public Path readSymbolicLink(Path link) throws IOException {
            return wrapped(memory().readSymbolicLink(inner(link)));
        }

        @Override
        public void delete(Path path) throws IOException {
            done("delete " + name(path));
            memory().delete(inner(path));
        }

        @Override
        public void copy(Path from, Path to, CopyOption... options) throws IOException {
            done("copy " + name(from) + " to " + name(to));
            memory().copy(inner(from), inner(to), options);
        }

        @Override
        public void move(Path from, Path to, CopyOption... options) throws IOException {
            boolean atOnce = List.of(options).contains(StandardCopyOption.ATOMIC_MOVE);
            done("move " + name(from) + " to " + name(to) + (atOnce ? " in one step" : ""));
            memory().move(inner(from), inner(to), options);
        }

        @Override
        public boolean isSameFile(Path one, Path other) throws IOException {
            return memory().isSameFile(inner(one), inner(other));
        }

        @Override
        public boolean isHidden(Path path) throws IOException {
            return memory().isHidden(inner(path));
        }

        @Override
        public FileStore getFileStore(Path path) throws IOException {
            return memory().getFileStore(inner(path));
        }

        @Override
        public void checkAccess(Path path, AccessMode... modes) throws IOException {
            memory().checkAccess(inner(path), modes);
        }

        @Override
        public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
            return memory().getFileAttributeView(inner(path), type, options);
        }

        @Override
        public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
                throws IOException {
            return memory().readAttributes(inner(path), type, options);
        }

        @Override
        public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options)
                throws IOException {
            return memory().readAttributes(inner(path), attributes, options);
        }

        @Override
        public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
            memory().setAttribute(inner(path), attribute, value, options);
        }
    }

    /** An open file, or folder if there is nothing to write to. */
    private static final class WatchedChannel extends FileChannel {
        private final WatchedDisk disk;
        private final String name;
        private final FileChannel inner;

        WatchedChannel(WatchedDisk disk, String name, FileChannel inner) {
            this.disk = disk;
            this.name = name;
            this.inner = inner;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            disk.done("write " + name);
            return inner.write(bytes);
        }

        @Override
        public void force(boolean withAttributes) throws IOException {
            disk.done("force " + name);
            if (inner != null) {
                inner.force(withAttributes);
            }
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return inner.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            if (inner != null) {
                inner.close();
            }
        }

        @Override
        public long position() throws IOException {
            return inner.position();
        }

        @Override
        public long size() throws IOException {
            return inner.size();
        }

        @Override
        public int read(ByteBuffer bytes) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long read(ByteBuffer[] buffers, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long write(ByteBuffer[] buffers, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel position(long newPosition) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel truncate(long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel target) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferFrom(ReadableByteChannel source, long position, long count) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int read(ByteBuffer bytes, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int write(ByteBuffer bytes, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock lock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }
    }
}
