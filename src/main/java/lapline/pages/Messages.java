package lapline.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.text.MessageFormat;
import java.util.AbstractMap;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Every sentence a person sees. A key begins with the name of its bundle: {@code
 * practice.entry.title} stands in {@code lapline/messages/practice.properties}. In pages {@code
 * #{t['practice.entry.title']}} or, with values to fill in, {@code #{t.say('practice.entry.saved',
 * time)}}.
 */
@Named("t")
@ApplicationScoped
public class Messages extends AbstractMap<String, String> {
  private final Map<String, ResourceBundle> bundles = new ConcurrentHashMap<>();

  @Override
  public String get(Object key) {
    String name = String.valueOf(key);
    try {
      return bundle(name).getString(name);
    } catch (MissingResourceException e) {
      // a missing sentence must not take the page away; MessagesTest finds it before a person does
      return name;
    }
  }

  public boolean has(String key) {
    try {
      return bundle(key).containsKey(key);
    } catch (MissingResourceException e) {
      return false;
    }
  }

  /** The sentence with its values filled in, by the rules of {@link MessageFormat}. */
  public String say(String key, Object... values) {
    return new MessageFormat(get(key), Locale.ENGLISH).format(values);
  }

  private ResourceBundle bundle(String key) {
    int dot = key.indexOf('.');
    String name = dot < 0 ? key : key.substring(0, dot);
    return bundles.computeIfAbsent(
        name, n -> ResourceBundle.getBundle("lapline.messages." + n, Locale.ENGLISH));
  }

  @Override
  public boolean containsKey(Object key) {
    return true;
  }

  @Override
  public Set<Entry<String, String>> entrySet() {
    return Set.of();
  }
}
