# Completion of splice for bash. The program itself answers what may stand where the cursor is, so
# that ropes and kinds of --tables and --plug-in are among it and nothing is listed here.
_splice() {
    local cur words cword word path before replies=() paths=
    _get_comp_words_by_ref -n "=:" cur words cword || return
    local given=()
    for word in "${words[@]:1:cword}"; do
        word=${word//[\"\'\\]/}
        [[ $word != "~/"* ]] || word=$HOME/${word#"~/"}
        given+=("$word")
    done
    ((cword >= ${#words[@]})) && given+=("")
    while IFS=$'\t' read -r word path; do
        replies+=("$word")
    done < <("${words[0]}" complete "${given[@]}" 2>/dev/null | sed -n 's/^\([^\t][^\t]*\)\t.*/\1\t/p')
    paths=$("${words[0]}" complete "${given[@]}" 2>/dev/null | sed -n 's/^\t//p')

    # bash parts words at = and :, and only what follows the last of them is put in.
    before=
    if [[ $cur == *[=:]* ]]; then
        before=${cur%"${cur##*[=:]}"}
    fi
    COMPREPLY=("${replies[@]#"$before"}")
    if [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *= ]]; then
        compopt -o nospace 2>/dev/null
    fi
    if [[ -n $paths ]]; then
        compopt -o filenames 2>/dev/null
        local of=-f
        [[ $paths == files ]] || of=-d
        while IFS= read -r path; do
            COMPREPLY+=("$path")
        done < <(compgen "$of" -- "${cur#"$before"}")
    fi
}
complete -F _splice splice
