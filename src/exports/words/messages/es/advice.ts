import type { Translation } from "../../message.js";
import type { advice as english } from "../en/advice.js";

export const advice: Translation<typeof english> = {
  quoted: "«{name}»",
  advice: {
    share: "{amount} para «{meal}» (día {day})",
    shareUnknown: "la parte para «{meal}» (día {day})",
    FREEZE:
      "{way, select, first {} other {O bien: }}Congele el día en que se prepara: {portions}. Para descongelarlo, páselo al frigorífico {before} antes de la comida. Una vez descongelado se conserva {after}.",
    laterMeal: "«{meal}» (día {day}) no antes del día {notBefore}",
    MAKE_LATER: "{way, select, first {} other {O bien: }}Prepare más tarde la parte de «{component}» para {meals}.",
    SWAP_DAYS: "{way, select, first {} other {O bien: }}Intercambie los días de «{meal}» y «{with}».",
    EAT_EARLIER: "{way, select, first {} other {O bien: }}Coma «{meal}» el día {day} como muy tarde.",
    EAT_IT_EARLIER: "{way, select, first {} other {O bien: }}Cómalo el día {day} como muy tarde.",
    SHOP_TWICE:
      "{way, select, first {} other {O bien: }}Compre más tarde, no antes del día {day}: {food} para {meals}.",
    EAT_BEFORE:
      "Aquí cuentan las horas: se conserva {hours, plural, one {# hora} many {# horas} other {# horas}} después de prepararlo; el plazo termina el día {day}{until, select, none {} other {, a las {until}}}.",
    NO_PUBLISHED_RULE:
      "Ninguna norma publicada lo cubre; el tiempo es el que da el plan. Siga las recomendaciones locales de seguridad alimentaria.",
    WRITER_EXCEEDS_RULE: "El plan da {writer}, una norma publicada {rule}; vale el tiempo más corto.",
    REGION_WITHOUT_RULE:
      "No se conoce aquí ninguna norma para {asked}; se han usado las de {used}. Consulte a su autoridad local.",
    tooLate: "Demasiado tarde para {meals}: {thing} se conserva {keeps}. {advice}",
  },
};
