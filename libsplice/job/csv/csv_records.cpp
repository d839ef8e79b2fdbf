// Cuts a CSV file into records; the only file that knows the CSV library.
#include "libsplice/job/csv/csv_records.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/csv/csv_start.h"

#include <csv.h>
#include <gsl/assert>

#include <algorithm>
#include <cstring>
#include <utility>

namespace libsplice {

namespace {

constexpr std::size_t chunk_size = std::size_t{64} * 1024;
/// A cell is given up once this much of it has come in, blanks and doubled quotes included.
constexpr std::size_t longest_raw_cell = 4 * longest_cell;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_blank(char c) {
    return c == ' ' || c == '\t';
}

bool is_ascii_text(std::string_view text) {
    unsigned all = 0;
    for (const char c : text) {
        all |= static_cast<unsigned char>(c);
    }
    return all < 0x80 && text.find('\0') == std::string_view::npos;
}

/// Finds where cell `index` starts in the raw bytes of a record whose quotes pair as far as there:
/// at its first byte that is no blank. The line comes back counted from 0, the column from 1.
Place locate(std::string_view raw, std::uint32_t index, char separator) {
    Place at{{}, 0, 1};
    bool quoted = false;
    for (std::size_t i = 0; i < raw.size(); ++i) {
        const char c = raw[i];
        if (index == 0 && (!is_blank(c) || c == separator)) {
            break;
        }
        const bool line_ends = c == '\n' || (c == '\r' && raw.substr(i + 1, 1) != "\n");
        if (!quoted && (line_ends || c == '\r')) {
            break;
        }
        if (c == '"') {
            quoted = !quoted;
        } else if (c == separator && !quoted) {
            --index;
        }
        if (line_ends) {
            ++at.line;
            at.column = 1;
        } else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) {
            ++at.column;
        }
    }
    return at;
}

} // namespace

/// libcsv's parser. It asks for strict quotes, and to be told of every line end outside of them, so
/// that blank lines can be told from records.
struct CsvRecords::Parser {
    csv_parser state{};

    Parser() {
        const int failed = csv_init(&state, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL);
        Ensures(failed == 0);
        csv_set_blk_size(&state, 4096);
    }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
    ~Parser() { csv_free(&state); }

    static void on_cell(void* text, std::size_t size, void* records) {
        static_cast<CsvRecords*>(records)->end_cell({static_cast<const char*>(text), size});
    }
    static void on_record(int, void* records) {
        static_cast<CsvRecords*>(records)->record_ended_ = true;
    }

    /// Forgets most of the open cell. One byte of text, or a closing quote and one blank after it,
    /// are kept, which is what the parser takes off again when the cell ends.
    void forget_cell() {
        state.spaces = std::min<std::size_t>(state.spaces, 1);
        state.entry_pos = std::min(state.entry_pos, state.spaces + 1);
    }
};

CsvRecords::CsvRecords(Input& input)
    : input_(input), parser_(std::make_unique<Parser>()), chunk_(chunk_size) {
    unread_ = {chunk_.begin(), chunk_.begin()}; // nothing yet, but never null
}

CsvRecords::~CsvRecords() = default;

Result<bool> CsvRecords::next() {
    do {
        auto read = read_record();
        if (!read || !*read) {
            return read;
        }
    } while (text_.empty() && !too_long_);
    check_cells();
    return true;
}

Result<bool> CsvRecords::read_record() {
    record_ended_ = false;
    text_.clear();
    cells_.clear();
    cell_count_ = 0;
    too_long_.reset();
    faults_.clear();
    raw_.clear();
    cell_began_ = 0;
    first_line_ = line_;
    while (!record_ended_) {
        auto filled = fill();
        if (!filled) {
            return filled;
        }
        if (!*filled && raw_.empty()) {
            return false;
        }
        // A last line without its end gets one; a quote that is still open swallows it.
        auto fault = feed(*filled ? take_piece() : "\n");
        if (!fault && !*filled && !record_ended_) {
            fault = Fault{Code::bad_quotes,
                          "the quote that opens here is never closed; put a closing quote",
                          place_of(static_cast<std::uint32_t>(cell_count_))};
        }
        if (fault) {
            return Unexpected(std::move(*fault));
        }
    }
    return true;
}

/// Sees to it that there is a piece to parse; false at the end of the input. A CR that ends the
/// chunk waits for what follows, which may be the LF of the same line end.
Result<bool> CsvRecords::fill() {
    if (!started_) {
        started_ = true;
        while (unread_.find('\n') == std::string_view::npos && unread_.size() < chunk_size &&
               !input_ended_) {
            if (auto read = refill(); !read) {
                return read;
            }
        }
        if (auto foreign = start()) {
            return Unexpected(*std::move(foreign));
        }
    }
    while ((unread_.empty() || unread_ == "\r") && !input_ended_) {
        if (auto read = refill(); !read) {
            return read;
        }
    }
    return !unread_.empty();
}

/// Looks at the first bytes: what kind of file it is, and what separates its cells.
std::optional<Fault> CsvRecords::start() {
    if (unread_.starts_with(byte_order_mark)) {
        unread_.remove_prefix(byte_order_mark.size());
    }
    if (auto foreign = foreign_file(unread_)) {
        foreign->at = Place{input_.name(), 1, 1};
        return foreign;
    }
    const CsvStart start = csv_start(unread_);
    line_ += start.skip > 0 ? 1 : 0;
    first_line_ = line_;
    unread_.remove_prefix(start.skip);
    separator_ = start.separator;
    csv_set_delim(&parser_->state, static_cast<unsigned char>(separator_));
    return std::nullopt;
}

Result<bool> CsvRecords::refill() {
    const std::size_t kept = unread_.size();
    std::memmove(chunk_.data(), unread_.data(), kept);
    auto read = input_.read(std::span(chunk_).subspan(kept));
    if (!read) {
        return Unexpected(std::move(read).error());
    }
    input_ended_ = *read == 0;
    unread_ = std::string_view(chunk_.data(), kept + *read);
    return true;
}

/// The rest of a physical line with its end, or as much of it as the chunk holds.
std::string_view CsvRecords::take_piece() {
    const std::string_view line = unread_.substr(0, unread_.find('\n')); // without its LF
    const bool has_lf = line.size() < unread_.size();
    std::size_t size = line.size() + (has_lf ? 1 : 0);
    if (const std::size_t cr = line.find('\r');
        cr != std::string_view::npos && (cr + 1 < line.size() || !has_lf)) {
        const bool may_be_half = cr + 1 == unread_.size() && !input_ended_;
        size = may_be_half ? cr : cr + 1;
    }
    const std::string_view piece = unread_.substr(0, size);
    unread_.remove_prefix(size);
    return piece;
}

std::optional<Fault> CsvRecords::feed(std::string_view piece) {
    const std::size_t count_before = cell_count_;
    const std::size_t raw_before = raw_.size();
    if (!too_long_ && cell_count_ <= most_cells) {
        raw_ += piece;
    }
    const std::size_t parsed = csv_parse(&parser_->state, piece.data(), piece.size(),
                                         &Parser::on_cell, &Parser::on_record, this);
    if (parsed != piece.size()) {
        Ensures(csv_error(&parser_->state) == CSV_EPARSE); // else memory has run out
        std::string text = parser_->state.quoted != 0
                               ? "text follows the closing quote of the cell that starts here"
                               : "this cell has a quote in it, and none round it";
        return Fault{Code::bad_quotes,
                     text +
                         "; put quotes round the whole cell and write each quote inside it twice",
                     place_of(static_cast<std::uint32_t>(cell_count_))};
    }
    if (piece.ends_with('\n') || piece.ends_with('\r')) {
        ++line_;
    }
    if (cell_count_ != count_before) {
        cell_began_ = raw_before;
    }
    if (!record_ended_) {
        bound_memory();
    }
    return std::nullopt;
}

/// A cell without an end must not fill the memory.
void CsvRecords::bound_memory() {
    if (parser_->state.entry_pos > longest_raw_cell ||
        raw_.size() - cell_began_ > longest_raw_cell) {
        too_long_ = too_long_.value_or(cell_count_);
        forgotten_ = true;
        parser_->forget_cell();
    }
}

void CsvRecords::end_cell(std::string_view text) {
    const std::size_t index = cell_count_++;
    const bool forgotten = std::exchange(forgotten_, false);
    if (cells_.size() > most_cells) {
        return;
    }
    while (!text.empty() && is_blank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && is_blank(text.back())) {
        text.remove_suffix(1);
    }
    if (forgotten || text.size() > longest_cell) {
        too_long_ = too_long_.value_or(index);
        text = {};
    }
    cells_.push_back(
        {static_cast<std::uint32_t>(text_.size()), static_cast<std::uint32_t>(text.size())});
    text_ += text;
}

void CsvRecords::check_cells() {
    if (too_long_) {
        faults_.push_back(too_long_fault());
        faults_.back().at = place_of(static_cast<std::uint32_t>(*too_long_));
    }
    if (is_ascii_text(text_)) {
        return;
    }
    for (std::uint32_t i = 0; i < cells_.size(); ++i) {
        if (auto fault = text_fault(cell(i))) {
            fault->at = place_of(i);
            faults_.push_back(std::move(*fault));
            cells_[i].size = 0;
        }
    }
}

Place CsvRecords::place_of(std::uint32_t index) const {
    const std::size_t last_known = too_long_.value_or(index);
    Place at = locate(raw_, std::min(index, static_cast<std::uint32_t>(last_known)), separator_);
    at.line += first_line_;
    at.file = input_.name();
    return at;
}

} // namespace libsplice
