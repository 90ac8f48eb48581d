import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Writes a jar anew with its classes in the form of Java 8, which differs by stack maps. A class of
 * the form of Java 5 is kept out of class archives, so that each process reads and verifies it. Run
 * when the project is packed: {@code java StackMaps.java FROM.jar TO.jar}.
 */
final class StackMaps {

  private StackMaps() {}

  public static void main(String[] words) throws IOException {
    Path from = Path.of(words[0]);
    Path to = Path.of(words[1]);
    Files.createDirectories(to.toAbsolutePath().getParent());
    try (JarFile jar = new JarFile(from.toFile());
        URLClassLoader classes = new URLClassLoader(new URL[] {from.toUri().toURL()});
        JarOutputStream out = new JarOutputStream(Files.newOutputStream(to))) {
      for (JarEntry entry : Collections.list(jar.entries())) {
        byte[] bytes = jar.getInputStream(entry).readAllBytes();
        ZipEntry written = new ZipEntry(entry.getName());
        written.setTime(entry.getTime());
        out.putNextEntry(written);
        out.write(isOld(entry.getName(), bytes) ? mapped(bytes, classes) : bytes);
        out.closeEntry();
      }
    }
  }

  /** Whether it is a class of a form before that of Java 8. */
  private static boolean isOld(String name, byte[] bytes) {
    return name.endsWith(".class")
        && (Byte.toUnsignedInt(bytes[6]) << 8 | Byte.toUnsignedInt(bytes[7])) < Opcodes.V1_8;
  }

  private static byte[] mapped(byte[] bytes, ClassLoader classes) {
    ClassWriter writer =
        new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
          @Override
          protected ClassLoader getClassLoader() {
            return classes;
          }
        };
    ClassVisitor raised =
        new ClassVisitor(Opcodes.ASM9, writer) {
          @Override
          public void visit(
              int form, int access, String name, String type, String above, String[] faces) {
            super.visit(Opcodes.V1_8, access, name, type, above, faces);
          }
        };
    new ClassReader(bytes).accept(raised, ClassReader.SKIP_FRAMES);
    return writer.toByteArray();
  }
}
