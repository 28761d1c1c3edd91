package lapline.pages;

import jakarta.faces.component.UIComponent;
import jakarta.faces.context.FacesContext;
import jakarta.faces.convert.Converter;
import jakarta.faces.convert.FacesConverter;

/**
 * A number in a page's address, such as the page of a list. An address is not a field that a person
 * fills in: what is no number there asks for the first.
 */
@FacesConverter("lapline.addressNumber")
public class AddressNumber implements Converter<Integer> {

  @Override
  public Integer getAsObject(FacesContext faces, UIComponent component, String text) {
    try {
      return Integer.valueOf(text.strip());
    } catch (NumberFormatException | NullPointerException e) {
      return 1;
    }
  }

  @Override
  public String getAsString(FacesContext faces, UIComponent component, Integer number) {
    return String.valueOf(number);
  }
}
