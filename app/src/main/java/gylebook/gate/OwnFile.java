package gylebook.gate;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/// Files that only their owner may read, written whole or not at all.
final class OwnFile {
  private OwnFile() {}

  /// Writes beside the old one, to the disk, and then in its place.
  static void write(Path file, byte[] bytes) throws IOException {
    Path folder = folder(file);
    Path beside = folder.resolve(file.getFileName() + ".new");
    Files.deleteIfExists(beside);
    Set<StandardOpenOption> newly = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try (FileChannel out = FileChannel.open(beside, newly, owner("rw-------"))) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        out.write(rest);
      }
      out.force(true);
    }
    Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static Path folder(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("'" + file + "' lies in no folder");
    }
    if (!Files.isDirectory(folder)) {
      Files.createDirectory(folder, owner("rwx------"));
    }
    return folder;
  }

  /// Rights for the owner alone, where the file system knows such rights.
  private static FileAttribute<?>[] owner(String rights) {
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
