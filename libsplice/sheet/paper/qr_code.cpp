// A text as a QR code, drawn as one path.
#include "libsplice/sheet/paper/qr_code.h"

#include <memory>
#include <qrencode.h>

namespace libsplice {

namespace {

constexpr std::size_t most_bytes = 400; // still read from a small label
constexpr int quiet_zone = 4;

struct Free {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

} // namespace

std::string qr_code(std::string_view text) {
    if (text.empty() || text.size() > most_bytes) {
        return {};
    }
    const std::string content(text);
    const std::unique_ptr<QRcode, Free> code(
        QRcode_encodeString8bit(content.c_str(), 0, QR_ECLEVEL_M));
    if (code == nullptr) {
        return {};
    }
    const int size = code->width + 2 * quiet_zone;
    const std::string side = std::to_string(size);
    std::string svg = "<svg class=\"qr\" viewBox=\"0 0 " + side + ' ' + side +
                      "\" role=\"img\" aria-label=\"the label's text as a QR code\" "
                      "shape-rendering=\"crispEdges\"><path d=\"";
    for (int y = 0; y < code->width; ++y) {
        for (int x = 0; x < code->width; ++x) {
            if ((code->data[y * code->width + x] & 1U) != 0) {
                svg += 'M' + std::to_string(x + quiet_zone) + ' ' + std::to_string(y + quiet_zone) +
                       "h1v1h-1z";
            }
        }
    }
    return svg + "\"/></svg>";
}

} // namespace libsplice
