package org.rigleaf.print;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Set;

/**
 * Shows templates the accessors of Rigleaf's own records and nothing else: no {@code getClass()},
 * no constructor, no field, no method that takes an argument.
 */
final class RecordAccess implements MemberAccessPolicy {
  private static final Set<String> OF_EVERY_OBJECT = Set.of("hashCode", "toString");

  @Override
  public ClassMemberAccessPolicy forClass(Class<?> type) {
    boolean here = type.getPackageName().startsWith("org.rigleaf.");
    boolean record = here && type.isRecord();
    boolean word = here && type.isEnum(); // an enum constant is read as its name
    return new ClassMemberAccessPolicy() {
      @Override
      public boolean isMethodExposed(Method method) {
        return record && isAccessor(method) || word && isToString(method);
      }

      @Override
      public boolean isConstructorExposed(Constructor<?> constructor) {
        return false;
      }

      @Override
      public boolean isFieldExposed(Field field) {
        return false;
      }
    };
  }

  @Override
  public boolean isToStringAlwaysExposed() {
    return false;
  }

  private static boolean isToString(Method m) {
    return m.getName().equals("toString") && m.getParameterCount() == 0;
  }

  private static boolean isAccessor(Method m) {
    return m.getParameterCount() == 0
        && m.getReturnType() != void.class
        && !Modifier.isStatic(m.getModifiers())
        && m.getDeclaringClass() != Object.class
        && !OF_EVERY_OBJECT.contains(m.getName());
  }
}
