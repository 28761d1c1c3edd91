package lapline.server;

import jakarta.el.ELContext;
import jakarta.el.ELException;
import jakarta.el.ELResolver;
import jakarta.el.PropertyNotWritableException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;

/** Lets pages read the components of records: {@code #{person.name}} for {@code person.name()}. */
public class RecordElResolver extends ELResolver {
  private static final ClassValue<Map<String, Method>> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
          Map<String, Method> found = new HashMap<>();
          for (RecordComponent part : type.getRecordComponents()) {
            Method accessor = part.getAccessor();
            accessor.setAccessible(true);
            found.put(part.getName(), accessor);
          }
          return found;
        }
      };

  @Override
  public Object getValue(ELContext context, Object base, Object property) {
    Method accessor = accessor(base, property);
    if (accessor == null) {
      return null;
    }
    context.setPropertyResolved(base, property);
    try {
      return accessor.invoke(base);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new ELException("cannot read " + property + " of " + base.getClass(), e);
    }
  }

  private static Method accessor(Object base, Object property) {
    return base instanceof Record
        ? ACCESSORS.get(base.getClass()).get(String.valueOf(property))
        : null;
  }

  @Override
  public Class<?> getType(ELContext context, Object base, Object property) {
    Method accessor = accessor(base, property);
    if (accessor == null) {
      return null;
    }
    context.setPropertyResolved(base, property);
    return accessor.getReturnType();
  }

  @Override
  public void setValue(ELContext context, Object base, Object property, Object value) {
    if (accessor(base, property) != null) {
      throw new PropertyNotWritableException("a record cannot be changed: " + property);
    }
  }

  @Override
  public boolean isReadOnly(ELContext context, Object base, Object property) {
    if (accessor(base, property) != null) {
      context.setPropertyResolved(base, property);
      return true;
    }
    return false;
  }

  @Override
  public Class<?> getCommonPropertyType(ELContext context, Object base) {
    return base instanceof Record ? String.class : null;
  }
}
