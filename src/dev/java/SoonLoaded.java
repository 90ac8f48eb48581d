import static org.objectweb.asm.Opcodes.*;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.LineNumberNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Writes jars anew in a form that a JVM starts sooner, doing the same. Run when the project is
 * packed: {@code java SoonLoaded.java FOLDER JARS}.
 *
 * <p>What a class calls by {@code invokedynamic} each process links anew, and a class archive of
 * Java 17 spares it little of that: lambdas become classes of their own, joined texts and the
 * methods of records become methods. A class of a form before Java 8 is kept out of archives for
 * want of stack maps: it gets them.
 */
final class SoonLoaded {

  private static final Type OBJECT = Type.getType(Object.class);
  private static final Type OBJECTS = Type.getType(java.util.Objects.class);
  private static final Type TEXT = Type.getType(String.class);
  private static final Type BUILDER = Type.getType(StringBuilder.class);
  private static final Method NEW = Method.getMethod("void <init> ()");
  private static final Map<Type, Type> BOXES =
      Map.of(
          Type.BOOLEAN_TYPE, Type.getType(Boolean.class),
          Type.CHAR_TYPE, Type.getType(Character.class),
          Type.BYTE_TYPE, Type.getType(Byte.class),
          Type.SHORT_TYPE, Type.getType(Short.class),
          Type.INT_TYPE, Type.getType(Integer.class),
          Type.LONG_TYPE, Type.getType(Long.class),
          Type.FLOAT_TYPE, Type.getType(Float.class),
          Type.DOUBLE_TYPE, Type.getType(Double.class));

  private final URLClassLoader loader;

  /** By their names without the ending; what is made of them comes last. */
  private final Map<String, ClassNode> classes = new LinkedHashMap<>();

  private SoonLoaded(URLClassLoader loader) {
    this.loader = loader;
  }

  public static void main(String[] words) throws IOException {
    Path folder = Files.createDirectories(Path.of(words[0]));
    for (String jar : List.of(words).subList(1, words.length)) {
      Path from = Path.of(jar);
      try (URLClassLoader loader = new URLClassLoader(new URL[] {from.toUri().toURL()})) {
        new SoonLoaded(loader).write(from, folder.resolve(from.getFileName()));
      }
    }
  }

  private void write(Path from, Path to) throws IOException {
    try (JarFile jar = new JarFile(from.toFile());
        JarOutputStream out = new JarOutputStream(Files.newOutputStream(to))) {
      List<JarEntry> entries = Collections.list(jar.entries());
      for (JarEntry entry : entries) {
        if (entry.getName().endsWith(".class") && !entry.getName().startsWith("META-INF/")) {
          ClassNode read = new ClassNode();
          new ClassReader(jar.getInputStream(entry).readAllBytes()).accept(read, 0);
          classes.put(read.name, read);
        }
      }
      for (ClassNode each : List.copyOf(classes.values())) {
        new Rewriting(each).all();
      }
      for (JarEntry entry : entries) {
        ClassNode read = classes.remove(entry.getName().replaceFirst("\\.class$", ""));
        byte[] bytes = read == null ? jar.getInputStream(entry).readAllBytes() : bytes(read);
        write(entry.getName(), bytes, entry.getTime(), out);
      }
      for (ClassNode made : classes.values()) {
        write(made.name + ".class", bytes(made), entries.get(0).getTime(), out);
      }
    }
  }

  private static void write(String name, byte[] bytes, long time, JarOutputStream out)
      throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(time);
    out.putNextEntry(entry);
    out.write(bytes);
    out.closeEntry();
  }

  private byte[] bytes(ClassNode read) {
    boolean old = read.version < V1_8;
    ClassWriter writer =
        new ClassWriter(old ? ClassWriter.COMPUTE_FRAMES : ClassWriter.COMPUTE_MAXS) {
          @Override
          protected ClassLoader getClassLoader() {
            return loader;
          }
        };
    read.version = Math.max(read.version, V1_8);
    read.accept(writer);
    return writer.toByteArray();
  }

  /** One class, whose dynamic calls become plain ones. */
  private final class Rewriting {
    private final ClassNode here;
    private final Type type;
    private int made;
    private int line;

    private Rewriting(ClassNode here) {
      this.here = here;
      this.type = Type.getObjectType(here.name);
    }

    /** Where classes know no nest yet, what is made beside them could not call what is private. */
    private void all() {
      if (here.version < V11) {
        return;
      }
      for (MethodNode method : List.copyOf(here.methods)) {
        // for debuggers alone: it would be a tenth of a class archive
        method.localVariables = null;
        for (AbstractInsnNode each : method.instructions.toArray()) {
          line = each instanceof LineNumberNode at ? at.line : line;
          MethodInsnNode plain = each instanceof InvokeDynamicInsnNode call ? plain(call) : null;
          if (plain != null) {
            method.instructions.set(each, plain);
          }
        }
      }
    }

    /** Null where it stays as it is. */
    private MethodInsnNode plain(InvokeDynamicInsnNode call) {
      return switch (call.bsm.getName() + " " + call.name) {
        case "bootstrap equals", "bootstrap hashCode" -> ofRecord(call);
        default ->
            switch (call.bsm.getName()) {
              case "metafactory" -> lambda(call);
              case "makeConcatWithConstants" -> joined(call);
              default -> null;
            };
      };
    }

    private MethodInsnNode callTo(ClassNode owner, Method method) {
      boolean isInterface = (owner.access & ACC_INTERFACE) != 0;
      return new MethodInsnNode(
          INVOKESTATIC, owner.name, method.getName(), method.getDescriptor(), isInterface);
    }

    private GeneratorAdapter method(ClassNode owner, int access, Method method) {
      MethodNode node =
          new MethodNode(access, method.getName(), method.getDescriptor(), null, null);
      owner.methods.add(node);
      return new GeneratorAdapter(node, access, method.getName(), method.getDescriptor());
    }

    // Lambdas -----------------------------------------------------------------------------------

    private MethodInsnNode lambda(InvokeDynamicInsnNode call) {
      Type face = Type.getReturnType(call.desc);
      ClassNode lambda = new ClassNode();
      String name = here.name + "$$" + made++;
      int access = ACC_FINAL | ACC_SUPER | ACC_SYNTHETIC;
      lambda.visit(
          here.version,
          access,
          name,
          null,
          "java/lang/Object",
          new String[] {face.getInternalName()});
      lambda.visitSource(here.sourceFile, null);
      joinNest(lambda);
      Type[] held = Type.getArgumentTypes(call.desc);
      for (int i = 0; i < held.length; i++) {
        lambda.visitField(ACC_PRIVATE | ACC_FINAL, "held" + i, held[i].getDescriptor(), null, null);
      }
      constructor(lambda, held);
      Method of = new Method("of", call.desc);
      maker(lambda, of, held);
      body(lambda, held, call);
      classes.put(name, lambda);
      return callTo(lambda, of);
    }

    private void joinNest(ClassNode lambda) {
      ClassNode host = here.nestHostClass == null ? here : classes.get(here.nestHostClass);
      lambda.nestHostClass = host.name;
      host.visitNestMember(lambda.name);
    }

    private void constructor(ClassNode lambda, Type[] held) {
      GeneratorAdapter code = method(lambda, 0, new Method("<init>", Type.VOID_TYPE, held));
      code.loadThis();
      code.invokeConstructor(OBJECT, NEW);
      for (int i = 0; i < held.length; i++) {
        code.loadThis();
        code.loadArg(i);
        code.putField(Type.getObjectType(lambda.name), "held" + i, held[i]);
      }
      code.returnValue();
      code.endMethod();
    }

    /** What holds nothing is made once. */
    private void maker(ClassNode lambda, Method of, Type[] held) {
      GeneratorAdapter code = method(lambda, ACC_STATIC, of);
      Type own = Type.getObjectType(lambda.name);
      if (held.length == 0) {
        lambda.visitField(
            ACC_PRIVATE | ACC_STATIC | ACC_FINAL, "ONE", own.getDescriptor(), null, null);
        GeneratorAdapter once = method(lambda, ACC_STATIC, Method.getMethod("void <clinit> ()"));
        make(once, own, held);
        once.putStatic(own, "ONE", own);
        once.returnValue();
        once.endMethod();
        code.getStatic(own, "ONE", own);
      } else {
        make(code, own, held);
      }
      code.returnValue();
      code.endMethod();
    }

    private void make(GeneratorAdapter code, Type own, Type[] held) {
      code.newInstance(own);
      code.dup();
      code.loadArgs();
      code.invokeConstructor(own, new Method("<init>", Type.VOID_TYPE, held));
    }

    private void body(ClassNode lambda, Type[] held, InvokeDynamicInsnNode call) {
      Method erased = new Method(call.name, ((Type) call.bsmArgs[0]).getDescriptor());
      Handle target = (Handle) call.bsmArgs[1];
      Type exact = (Type) call.bsmArgs[2];
      Type owner = Type.getObjectType(target.getOwner());
      boolean makes = target.getTag() == H_NEWINVOKESPECIAL;
      List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(target.getDesc())));
      if (!makes && target.getTag() != H_INVOKESTATIC) {
        wanted.add(0, owner);
      }

      GeneratorAdapter code = method(lambda, ACC_PUBLIC, erased);
      code.visitLineNumber(line, code.mark());
      if (makes) {
        code.newInstance(owner);
        code.dup();
      }
      for (int i = 0; i < held.length; i++) {
        code.loadThis();
        code.getField(Type.getObjectType(lambda.name), "held" + i, held[i]);
        convert(code, held[i], wanted.get(i));
      }
      for (int i = 0; i < erased.getArgumentTypes().length; i++) {
        code.loadArg(i);
        convert(code, erased.getArgumentTypes()[i], exact.getArgumentTypes()[i]);
        convert(code, exact.getArgumentTypes()[i], wanted.get(held.length + i));
      }
      code.visitMethodInsn(
          opcode(target),
          target.getOwner(),
          target.getName(),
          target.getDesc(),
          target.isInterface());
      Type got = makes ? owner : Type.getReturnType(target.getDesc());
      convert(code, got, exact.getReturnType());
      convert(code, exact.getReturnType(), erased.getReturnType());
      code.returnValue();
      code.endMethod();
    }

    private static int opcode(Handle target) {
      return switch (target.getTag()) {
        case H_INVOKESTATIC -> INVOKESTATIC;
        case H_NEWINVOKESPECIAL -> INVOKESPECIAL;
        // a private method of its nest
        default -> target.isInterface() ? INVOKEINTERFACE : INVOKEVIRTUAL;
      };
    }

    /** As a lambda takes and gives values: cast, widened, boxed, unboxed or dropped. */
    private static void convert(GeneratorAdapter code, Type from, Type to) {
      if (to.equals(Type.VOID_TYPE)) {
        drop(code, from);
      } else if (BOXES.containsKey(from) && BOXES.containsKey(to)) {
        code.cast(from, to);
      } else if (BOXES.containsKey(from)) {
        code.valueOf(from);
      } else if (BOXES.containsKey(to)) {
        Type unboxed = unboxed(from, to);
        code.unbox(unboxed);
        code.cast(unboxed, to);
      } else if (!from.equals(to)) {
        code.checkCast(to);
      }
    }

    private static void drop(GeneratorAdapter code, Type from) {
      if (from.getSize() == 2) {
        code.pop2();
      } else if (from.getSize() == 1) {
        code.pop();
      }
    }

    private static Type unboxed(Type box, Type otherwise) {
      for (Map.Entry<Type, Type> each : BOXES.entrySet()) {
        if (each.getValue().equals(box)) {
          return each.getKey();
        }
      }
      return otherwise;
    }

    // Joined texts ------------------------------------------------------------------------------

    private MethodInsnNode joined(InvokeDynamicInsnNode call) {
      Method method = new Method("joined$" + made++, call.desc);
      GeneratorAdapter code = method(here, ACC_PRIVATE | ACC_STATIC | ACC_SYNTHETIC, method);
      code.newInstance(BUILDER);
      code.dup();
      code.invokeConstructor(BUILDER, NEW);
      Iterator<Object> constants = List.of(call.bsmArgs).listIterator(1);
      int argument = 0;
      for (String part : ((String) call.bsmArgs[0]).split("(?<=[\1\2])|(?=[\1\2])")) {
        if (part.equals("\1")) {
          code.loadArg(argument);
          append(code, method.getArgumentTypes()[argument++]);
        } else {
          code.push(part.equals("\2") ? constants.next().toString() : part);
          append(code, TEXT);
        }
      }
      code.invokeVirtual(BUILDER, Method.getMethod("String toString ()"));
      code.returnValue();
      code.endMethod();
      return callTo(here, method);
    }

    private void append(GeneratorAdapter code, Type type) {
      boolean small = type.equals(Type.BYTE_TYPE) || type.equals(Type.SHORT_TYPE);
      Type taken =
          small ? Type.INT_TYPE : BOXES.containsKey(type) || type.equals(TEXT) ? type : OBJECT;
      code.invokeVirtual(BUILDER, new Method("append", BUILDER, new Type[] {taken}));
    }

    // Methods of records ------------------------------------------------------------------------

    private MethodInsnNode ofRecord(InvokeDynamicInsnNode call) {
      Method method = new Method(call.name + "$", call.desc);
      GeneratorAdapter code = method(here, ACC_PRIVATE | ACC_STATIC | ACC_SYNTHETIC, method);
      List<Handle> fields = Stream.of(call.bsmArgs).skip(2).map(field -> (Handle) field).toList();
      if (call.name.equals("equals")) {
        equals(code, fields);
      } else {
        hashCode(code, fields);
      }
      code.endMethod();
      return callTo(here, method);
    }

    private void equals(GeneratorAdapter code, List<Handle> fields) {
      Label differs = code.newLabel();
      code.loadArg(1);
      code.instanceOf(type);
      code.ifZCmp(GeneratorAdapter.EQ, differs);
      for (Handle field : fields) {
        Type of = get(code, 0, field);
        get(code, 1, field);
        if (BOXES.containsKey(of)) {
          Method compare = new Method("compare", Type.INT_TYPE, new Type[] {of, of});
          code.invokeStatic(BOXES.get(of), compare);
          code.ifZCmp(GeneratorAdapter.NE, differs);
        } else {
          code.invokeStatic(OBJECTS, Method.getMethod("boolean equals (Object, Object)"));
          code.ifZCmp(GeneratorAdapter.EQ, differs);
        }
      }
      code.push(true);
      code.returnValue();
      code.mark(differs);
      Object[] locals = {here.name, OBJECT.getInternalName()};
      code.visitFrame(F_NEW, locals.length, locals, 0, new Object[0]);
      code.push(false);
      code.returnValue();
    }

    private void hashCode(GeneratorAdapter code, List<Handle> fields) {
      code.push(0);
      for (Handle field : fields) {
        code.push(31);
        code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
        Type of = get(code, 0, field);
        Type taken = BOXES.containsKey(of) ? of : OBJECT;
        Method hash = new Method("hashCode", Type.INT_TYPE, new Type[] {taken});
        code.invokeStatic(BOXES.getOrDefault(of, OBJECTS), hash);
        code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
      }
      code.returnValue();
    }

    private Type get(GeneratorAdapter code, int argument, Handle field) {
      Type of = Type.getType(field.getDesc());
      code.loadArg(argument);
      code.checkCast(type);
      code.getField(type, field.getName(), of);
      return of;
    }
  }
}
